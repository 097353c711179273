/**
 * The search that boards for saws and for routers have in common: {@link org.standwright.sheet.lane.Lanes} side by side,
 * each a {@link org.standwright.sheet.lane.LateAcceptance} that changes a {@link org.standwright.sheet.lane.Layout} step
 * by step.
 *
 * <p>What a board is ({@link org.standwright.sheet.lane.BoardInWork}) and what a step does to it ({@link
 * org.standwright.sheet.lane.Move}) is for those who search: a tree of cuts whose rests are disjoint, or pieces anywhere
 * between free rectangles that overlap.
 */
package org.standwright.sheet.lane;
