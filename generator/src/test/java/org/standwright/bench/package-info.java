/** Small programs that print how long things take, and how large they get. Run by hand, never by a build. */
package org.standwright.bench;
