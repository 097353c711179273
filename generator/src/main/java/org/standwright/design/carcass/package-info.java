/** The panels of a carcass and how they are joined. */
package org.standwright.design.carcass;
