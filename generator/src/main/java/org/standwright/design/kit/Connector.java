package org.standwright.design.kit;

/**
 * A one-piece connecting screw for panels: through one panel's face into another's edge.
 *
 * @param length mm, under and with its head
 * @param thread bore for its thread in the edge, mm
 * @param shank bore for its shank in the face, mm
 * @param head bore for its head in the face, mm
 * @param headDepth of that bore, mm
 */
public record Connector(String name, double length, double thread, double shank, double head, double headDepth) {}
