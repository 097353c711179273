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
        keys.put("3D: G, S, B, W", "floor grid, person, the boards' way, wall surface");
        keys.put("3D: X", "cut it open; with Shift, keep the other side; comma and full stop move the cut");
        keys.put("3D: M", "measure between two faces; Esc leaves it");
        keys.put("3D: C", "save a picture");
        keys.put("By hand: arrows", "pick another front, holder or obstacle; with Ctrl, move it");
        keys.put("By hand: A, Delete, S, J", "add a drawer, remove, split in two, join with the next");
        keys.put("By hand: D, O, R", "a door, open space, drawers; Alt+Up and Alt+Down change places");
        keys.put("By hand: B", "a bay more; Alt+Left and Alt+Right change places");
        keys.put("By hand, walls: P, D, Delete", "let it be placed again, duplicate, remove");
        keys.put("Sheets: Alt+Left, Alt+Right", "previous and next cut; Page Up and Page Down turn the sheets");
        keys.put("Drawings: + − arrows 0", "nearer, farther, move, fit");
        keys.put("Packet: Page Up, Page Down", "previous and next page");
        keys.put("Form: Enter, Esc", "take what was typed, or leave it as it was");
        keys.put("Form: Up, Down", "one step more or less, in a field with a length");
        keys.put("Form: Ctrl+Up, Ctrl+Down", "move an entry of a list");
        keys.put("Text: F6", "leave the text for what is wrong with it");
        return keys;
    }
}
