package org.standwright.check;

import java.util.List;

/**
 * One thing that can go wrong in the workshop.
 *
 * @param <S> what it looks at: furniture of one kind, with everything that weighs on it
 */
public interface Rule<S> {
    RuleText text();

    /**
     * What it finds. A rule that measures something says so even where all is well, with the worst figure of each subject;
     * a rule that does not concern this piece of furniture finds nothing.
     */
    List<Finding> check(S subject);
}
