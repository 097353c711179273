/** From a cut list and a stock to a sheet plan: {@link org.standwright.sheet.plan.SheetPlanner} is the door. */
package org.standwright.sheet.plan;
