/**
 * What a router does to one part: each face's outlines, pockets and bores as exact lines in the part's frame, with the
 * relief that a round bit needs in square corners, and in words what it leaves undone.
 */
package org.standwright.router.machining;
