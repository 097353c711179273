package org.standwright.check.fastener;

import java.util.List;
import java.util.Optional;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;

/** The same stand with one drawer more, each of them lower, wherever their heights are worked out. */
final class MoreDrawers {
    private MoreDrawers() {}

    static Optional<StandDesign> in(StandDesign design) {
        var bays = bays(design.bays());
        return bays.equals(design.bays())
                ? Optional.empty()
                : Optional.of(Redesign.of(design).bays(bays).done());
    }

    private static List<Bay> bays(List<Bay> bays) {
        return bays.stream()
                .map(bay -> new Bay(
                        bay.width(),
                        bay.contents().stream().map(MoreDrawers::more).toList()))
                .toList();
    }

    private static Content more(Content content) {
        if (content instanceof Content.EqualDrawers equal) {
            return new Content.EqualDrawers(equal.count() + 1, equal.least(), equal.most());
        }
        if (content instanceof Content.GraduatedDrawers graduated) {
            return new Content.GraduatedDrawers(
                    graduated.count() + 1, graduated.ratio(), graduated.least(), graduated.most());
        }
        return content instanceof Content.Divided divided
                ? new Content.Divided(divided.height(), bays(divided.bays()))
                : content;
    }
}
