/**
 * The editing form of a design file, made from the schema: {@link org.standwright.viewer.form.FormPane} shows the rows
 * of {@link org.standwright.file.form}, {@link org.standwright.viewer.form.FormModel} turns what is typed and chosen in
 * them into single edits of the text ({@link org.standwright.viewer.form.Edits}).
 *
 * <p>The text is the only state. After each edit the form is shown the new text and brings its nodes up to date, which
 * stay where they are: a field keeps its caret, the pane its scroll. What is folded is built when it is opened.
 */
package org.standwright.viewer.form;
