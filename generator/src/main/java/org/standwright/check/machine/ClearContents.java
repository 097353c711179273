package org.standwright.check.machine;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.StandDesign;

/** What a design keeps clear, in all its bays and the bays within them. */
final class ClearContents {
    private ClearContents() {}

    static List<Content.Clear> of(StandDesign design) {
        return of(design.bays()).toList();
    }

    private static Stream<Content.Clear> of(List<Bay> bays) {
        return bays.stream().flatMap(bay -> bay.contents().stream()).flatMap(content -> {
            if (content instanceof Content.Divided divided) {
                return of(divided.bays());
            }
            return content instanceof Content.Clear clear ? Stream.of(clear) : Stream.empty();
        });
    }
}
