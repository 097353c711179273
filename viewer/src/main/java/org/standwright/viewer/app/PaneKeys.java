package org.standwright.viewer.app;

import java.util.LinkedHashMap;
import java.util.Map;

/** What keys do while a pane has the focus. */
final class PaneKeys {
    private PaneKeys() {}

    static Map<String, String> all() {
        var keys = new LinkedHashMap<String, String>();
        keys.put("3D: arrows", "turn; with Shift, move");
        keys.put("3D: + and −", "nearer and farther");
        keys.put("3D: 1 to 6", "from the front, back, left, right, top, three quarters");
        keys.put("3D: F", "show all of it");
        keys.put("3D: P", "parallel or in perspective");
        keys.put("3D: E", "lines at edges");
        keys.put("3D: H, I, A", "hide the picked part, see only it, show every part again");
        keys.put("3D: T", "see through all but the picked part");
        keys.put("3D: O", "open or close the drawer of the picked part; with Shift, all");
        keys.put("3D: Page Up, Page Down", "one step of assembly on, or back");
        keys.put("Drawings: + − arrows 0", "nearer, farther, move, fit");
        keys.put("Packet: Page Up, Page Down", "previous and next page");
        keys.put("Form: Enter, Esc", "take what was typed, or leave it as it was");
        keys.put("Form: Up, Down", "one step more or less, in a field with a length");
        keys.put("Form: Ctrl+Up, Ctrl+Down", "move an entry of a list");
        keys.put("Text: F6", "leave the text for what is wrong with it");
        return keys;
    }
}
