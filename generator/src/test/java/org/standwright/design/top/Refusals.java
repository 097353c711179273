package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.regex.Pattern;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;

/** What is refused, and the figures that its ways out name. */
final class Refusals {
    private Refusals() {}

    static ImpossibleDesignException of(StandDesign design) {
        return catchThrowableOfType(ImpossibleDesignException.class, () -> StandBuilder.build(design));
    }

    /** The figure in a message at the group of a pattern, mm. */
    static double figure(ImpossibleDesignException refusal, String pattern) {
        var match = Pattern.compile(pattern).matcher(refusal.getMessage());
        assertThat(match.find()).as("%s in: %s", pattern, refusal.getMessage()).isTrue();
        return Double.parseDouble(match.group(1));
    }
}
