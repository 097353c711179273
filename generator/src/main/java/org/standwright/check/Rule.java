package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;

/** One thing that can go wrong in the workshop. */
interface Rule {
    List<Finding> check(Stand stand, Load load);
}
