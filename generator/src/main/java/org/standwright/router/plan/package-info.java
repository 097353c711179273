/**
 * Lays the parts of a cut list on the boards of a stock for a router: {@link org.standwright.router.plan.RouterPlanner} is
 * the door.
 */
package org.standwright.router.plan;
