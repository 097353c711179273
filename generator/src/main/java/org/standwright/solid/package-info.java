/**
 * Part and its features to a closed solid.
 *
 * <p>Vertices lie on a grid of 1/1024 mm, so that each is an exact float below 16 m.
 */
package org.standwright.solid;
