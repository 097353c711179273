/**
 * What the maker edits: the text of a design file, every state that it had, and what keeps it from getting lost.
 *
 * <p>Knows no screen. A {@link org.standwright.viewer.document.Document} never changes; an edit makes another one, and
 * {@link org.standwright.viewer.document.History} lists them.
 */
package org.standwright.viewer.document;
