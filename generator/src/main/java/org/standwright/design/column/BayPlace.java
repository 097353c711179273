package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Bay;
import org.standwright.design.Content;

/**
 * Which bay of the design one is.
 *
 * @param pointer of the bay in the design file: {@code /bays/1/contents/0/bays/0}
 * @param name as the maker reads it: '2', within it '2a'
 */
record BayPlace(String pointer, String name) {
    static BayPlace of(int bay) {
        return new BayPlace("/bays/" + bay, String.valueOf(bay + 1));
    }

    String content(int content) {
        return pointer + "/contents/" + content;
    }

    boolean isNested() {
        return pointer.indexOf("/contents/") >= 0;
    }

    /** The bays within one divided content of this bay; their letters run on through all its contents. */
    List<BayPlace> within(Bay bay, int content) {
        int before = bay.contents().subList(0, content).stream()
                .mapToInt(BayPlace::bays)
                .sum();
        var places = new ArrayList<BayPlace>();
        for (int i = 0; i < bays(bay.contents().get(content)); i++) {
            places.add(new BayPlace(content(content) + "/bays/" + i, name + letter(before + i)));
        }
        return places;
    }

    private static int bays(Content content) {
        return content instanceof Content.Divided divided ? divided.bays().size() : 0;
    }

    /** a to z, then a2 to z2. */
    private static String letter(int index) {
        var letter = String.valueOf((char) ('a' + index % 26));
        return index < 26 ? letter : letter + (index / 26 + 1);
    }
}
