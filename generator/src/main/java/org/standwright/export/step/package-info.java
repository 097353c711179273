/**
 * STEP files (ISO 10303-21, schema AUTOMOTIVE_DESIGN of AP214): parts as exact solids, assemblies with every part once
 * and placed as often as it occurs. {@link StepWriter} is the door.
 */
package org.standwright.export.step;
