package org.standwright.check.fastener;

import java.util.List;
import java.util.Optional;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;

/**
 * The same stand with one drawer more or less in each column whose heights are worked out; a column of one stays.
 *
 * @param more to add to the count, 1 or -1
 */
public record DrawerCount(int more) {
    /** Nothing where no column changes. */
    public Optional<StandDesign> in(StandDesign design) {
        var bays = bays(design.bays());
        return bays.equals(design.bays())
                ? Optional.empty()
                : Optional.of(Redesign.of(design).bays(bays).done());
    }

    private List<Bay> bays(List<Bay> bays) {
        return bays.stream()
                .map(bay -> new Bay(
                        bay.width(), bay.contents().stream().map(this::changed).toList()))
                .toList();
    }

    private Content changed(Content content) {
        if (content instanceof Content.EqualDrawers equal) {
            return new Content.EqualDrawers(count(equal.count()), equal.least(), equal.most());
        }
        if (content instanceof Content.GraduatedDrawers graduated) {
            return new Content.GraduatedDrawers(
                    count(graduated.count()), graduated.ratio(), graduated.least(), graduated.most());
        }
        return content instanceof Content.Divided divided
                ? new Content.Divided(divided.height(), bays(divided.bays()))
                : content;
    }

    private int count(int now) {
        return Math.max(1, now + more);
    }
}
