package org.standwright.advice;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.rules.Checks;
import org.standwright.check.wall.HungWall;
import org.standwright.design.Design;
import org.standwright.solid.AssemblySolids;

/**
 * How furniture of one kind is judged again after a change.
 *
 * @param <S> what the rules look at
 * @param build what they look at, built from a changed design; nothing for a design of another kind. Throws
 *     {@link org.standwright.design.ImpossibleDesignException} for one that cannot be built.
 * @param design the design that it was built from
 */
public record Judging<S>(List<Rule<S>> rules, Function<Design, Optional<S>> build, Function<S, Design> design) {
    public Judging {
        rules = List.copyOf(rules);
    }

    /** Of a stand, with all its rules. */
    static Judging<LoadedStand> ofStand(AssemblySolids solids) {
        return ofStand(solids, Checks.STAND);
    }

    /** @param solids of the stand before it was changed; those of equal parts are taken over */
    static Judging<LoadedStand> ofStand(AssemblySolids solids, List<Rule<LoadedStand>> rules) {
        return new Judging<>(rules, design -> design.accept(new RebuiltStand(solids)), LoadedStand::design);
    }

    /** Of walls of cleats, with all their rules. */
    static Judging<HungWall> ofWall(AssemblySolids solids) {
        return new Judging<>(Checks.WALL, design -> design.accept(new RebuiltWall(solids)), HungWall::design);
    }

    /** What one of the rules finds, as strict as the design wants it. */
    Stream<Finding> findings(Rule<S> rule, S subject) {
        return Checks.of(rule, subject, design.apply(subject).rules()).stream();
    }
}
