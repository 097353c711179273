package org.standwright.file.edit;

import org.standwright.file.text.Pointer;

/** Rewrites the entries of a list that differ; what stands before and after them stays. */
final class ListChange {
    private final DesignChange text;
    private final Changed list;

    ListChange(DesignChange text, Changed list) {
        this.text = text;
        this.list = list;
    }

    void change() {
        int before = list.before().size();
        int after = list.after().size();
        int shared = Math.min(before, after);
        int start = 0;
        while (start < shared && isSame(start, start)) {
            start++;
        }
        int end = 0;
        while (end < shared - start && isSame(before - 1 - end, after - 1 - end)) {
            end++;
        }
        for (int entry = start; entry < shared - end; entry++) {
            text.value(list.entry(entry));
        }
        for (int entry = before - end - 1; entry >= after - end; entry--) {
            text.remove(Pointer.child(list.at(), entry));
        }
        for (int entry = before - end; entry < after - end; entry++) {
            text.insert(list, entry);
        }
    }

    private boolean isSame(int before, int after) {
        return SameTree.is(list.before().get(before), list.after().get(after));
    }
}
