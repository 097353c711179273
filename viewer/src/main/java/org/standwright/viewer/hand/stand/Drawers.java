package org.standwright.viewer.hand.stand;

import java.util.List;
import org.standwright.design.Content;

/** Contents of a bay that are drawers. */
final class Drawers {
    private Drawers() {}

    static boolean are(Content content) {
        return content instanceof Content.GivenDrawers
                || content instanceof Content.EqualDrawers
                || content instanceof Content.GraduatedDrawers
                || content instanceof Content.FillDrawers;
    }

    /**
     * How many drawers one content has.
     *
     * @param left how many there are in all from this content on, before something else follows
     */
    static int count(List<Content> contents, int at, int left) {
        var content = contents.get(at);
        if (content instanceof Content.FillDrawers) {
            int after = 0;
            for (int i = at + 1; i < contents.size() && are(contents.get(i)); i++) {
                after += count(contents, i, left);
            }
            return left - after;
        } else if (content instanceof Content.GivenDrawers given) {
            return given.fronts().size();
        } else if (content instanceof Content.EqualDrawers equal) {
            return equal.count();
        }
        return ((Content.GraduatedDrawers) content).count();
    }

    static Cell.Share share(Content content) {
        if (content instanceof Content.GivenDrawers) {
            return Cell.Share.GIVEN;
        } else if (content instanceof Content.EqualDrawers) {
            return Cell.Share.EQUAL;
        }
        return content instanceof Content.GraduatedDrawers ? Cell.Share.GRADUATED : Cell.Share.FILLED;
    }
}
