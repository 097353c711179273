package org.standwright.viewer.form;

/** What all views of one form share. */
record Scope(FormModel model, Folds folds) {}
