package org.standwright.viewer.app;

/**
 * How the window was left.
 *
 * @param x of its upper left corner, as the screen counts
 * @param look 'light' or 'dark'
 * @param percent size of text
 */
record WindowState(double x, double y, double width, double height, boolean isMaximized, String look, int percent) {}
