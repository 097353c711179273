/**
 * How a machine stand is worked out from its design: the height stack first, then the carcass, its bays, the fronts, the
 * drawers behind them and what the carcass stands on.
 *
 * <p>Assembly frame: x = 0 at the outside of the left side, y = 0 at the front edge of the carcass, z = 0 on the floor.
 */
package org.standwright.design.stand;
