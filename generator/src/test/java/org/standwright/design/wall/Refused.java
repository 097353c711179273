package org.standwright.design.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.assertj.core.api.AbstractStringAssert;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.standwright.design.ImpossibleDesignException;

/** What a maker reads when a design is refused. */
public final class Refused {
    private Refused() {}

    /** The words of the refusal at a field. */
    public static AbstractStringAssert<?> at(String field, ThrowingCallable code) {
        var refusal = catchThrowableOfType(ImpossibleDesignException.class, code);
        assertThat(refusal).as("a refusal").isNotNull();
        assertThat(refusal.field()).isEqualTo(field);
        return assertThat(refusal.getMessage());
    }
}
