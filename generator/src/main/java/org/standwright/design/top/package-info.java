/** The worktop, and the machine that stands on it. */
package org.standwright.design.top;
