package org.standwright.check.fastener;

import java.util.List;

/** All sizes of a kind of fastener, from thin to thick. */
final class Sizes {
    private Sizes() {}

    static List<Fastener> of(FastenerKind kind) {
        return switch (kind) {
            case WOOD_SCREW -> List.of(NumberedScrew.values());
            case LAG_SCREW -> List.of(LagScrew.values());
            case NAIL -> List.of(CommonNail.values());
        };
    }
}
