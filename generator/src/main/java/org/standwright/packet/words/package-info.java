/** What paper and text files say alike: names, sizes and stages of pieces, and how a height was found. */
package org.standwright.packet.words;
