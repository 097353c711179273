/** The numbers that everything in a stand shares, and the words and sizes that go into messages and shopping lists. */
package org.standwright.design.frame;
