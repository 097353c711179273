package org.standwright.viewer.form;

import javafx.scene.Node;
import javafx.scene.layout.VBox;
import org.standwright.file.form.Row;

/** Shows one row; stays the same node while the row's value changes. */
abstract class RowView extends VBox {
    private final Scope scope;
    private final KnownHeight height = new KnownHeight();
    private Row row;
    private boolean hadNoProblem;

    RowView(Row row, Scope scope) {
        this.row = row;
        this.scope = scope;
        hadNoProblem = scope.model().isFine(row);
        getStyleClass().add("form-row");
        setMinHeight(USE_PREF_SIZE);
    }

    @Override
    protected double computePrefHeight(double width) {
        return height.at(width, super::computePrefHeight);
    }

    @Override
    public void requestLayout() {
        if (height != null) { // VBox asks for it before this is made
            height.forget();
        }
        super.requestLayout();
    }

    /** The view that suits a row. */
    static RowView of(Row row, Scope scope) {
        if (row.mustBeAdded()) {
            return new AddView(row, scope);
        }
        return switch (row.input()) {
            case LIST -> new EntriesView(row, scope);
            case GROUP -> new GroupView(row, scope);
            case PRESET -> isSection(row) ? new GroupView(row, scope) : new PresetView(row, scope);
            default -> new FieldView(row, scope);
        };
    }

    /** Whether this view can show what stands there now. */
    final boolean suits(Row now) {
        return row.mustBeAdded() == now.mustBeAdded()
                && row.input().holdsRows() == now.input().holdsRows()
                && Editor.kind(row) == Editor.kind(now);
    }

    /** Brings the view up to date. */
    final void update(Row now) {
        boolean isLike = hadNoProblem && scope.model().isFine(now) && row.isLike(now);
        if (!isLike) {
            row = now;
            hadNoProblem = scope.model().isFine(now);
            refresh();
        }
    }

    final Row row() {
        return row;
    }

    final Scope scope() {
        return scope;
    }

    /** Whether the row is one of the file's own, which stand under titles. */
    static boolean isSection(Row row) {
        return row.parent().filter(around -> around.parent().isEmpty()).isPresent();
    }

    abstract void refresh();

    /** Puts controls at the end of the first line. */
    abstract void addTrailing(Node... controls);

    /** Opens what is folded on the way to a row, and gives the view of it. */
    abstract RowView reveal(String path);

    /** Puts the keyboard's focus on it. */
    abstract void focus();
}
