package org.standwright.check;

import java.util.List;

/** One thing that can go wrong in the workshop. */
public interface Rule {
    RuleText text();

    /**
     * What it finds. A rule that measures something says so even where all is well, with the worst figure of each subject;
     * a rule that does not concern this stand finds nothing.
     */
    List<Finding> check(LoadedStand stand);
}
