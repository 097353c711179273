package org.standwright.sheet.job;

/**
 * One board as the search leaves it.
 *
 * @param kind index of its kind in the job
 */
public record CutTree(int kind, CutNode root) {}
