package org.standwright.viewer.form;

/**
 * What a form does to the text of its file. Pointers are JSON pointers (RFC 6901); values are JSON; all else in the text
 * stays as it is. Each call is one step that can be undone, by its name such as 'Change working height'.
 */
public interface Edits {
    /** Writes a value over another, or adds a field to an object that is there. */
    void set(String pointer, String json, String what);

    /** Takes a field or a list's entry away. */
    void remove(String pointer, String what);

    /** Puts an entry into a list, before the one that has this number. */
    void insert(String list, int index, String json, String what);

    /** Moves an entry, so that it has the number {@code to} afterwards. */
    void move(String list, int from, int to, String what);
}
