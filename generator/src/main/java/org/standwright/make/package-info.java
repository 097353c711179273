/**
 * The one door that the command line and the viewer use: everything about one design, and the folder it is handed over
 * in.
 *
 * <p>{@link org.standwright.make.Product} holds what was worked out, {@link org.standwright.make.Format} turns it into
 * named files, {@link org.standwright.make.OutputFolder} puts them on disk whole or not at all.
 */
package org.standwright.make;
