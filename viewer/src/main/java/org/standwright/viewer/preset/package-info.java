/** What one can begin with: complete designs with a picture, a first stand for a machine, a first wall. */
package org.standwright.viewer.preset;
