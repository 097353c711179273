package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Proxy;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Design;
import org.standwright.unit.Units;

class RemedyTest {
    private static final Remedy IN_INCHES = Remedy.ofStand("inches", design -> Optional.of(design.readIn(Units.INCH)));

    @Test
    void changesAStand() {
        var stand = Stands.plain(draft -> {});

        assertThat(IN_INCHES.change().apply(stand)).contains(stand.readIn(Units.INCH));
    }

    @Test
    void aChangeOfAStandAppliesToNothingElse() {
        var other = (Design) Proxy.newProxyInstance(
                Design.class.getClassLoader(), new Class<?>[] {Design.class}, (proxy, method, values) -> {
                    throw new AssertionError("'" + method.getName() + "' was asked of another kind of furniture.");
                });

        assertThat(IN_INCHES.change().apply(other)).isEmpty();
        assertThat(IN_INCHES.and(IN_INCHES).change().apply(other)).isEmpty();
    }
}
