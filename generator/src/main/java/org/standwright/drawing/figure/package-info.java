/**
 * Views of a stand, its height stack and its sheets, drawn with their dimensions as figures to be placed on paper.
 *
 * <p>A figure has a frame of its own, in millimetres of paper; {@link org.standwright.drawing.figure.Figure#at} places
 * it by the box around its ink. What is added to a figure keeps clear of the letters that stand there already.
 */
package org.standwright.drawing.figure;
