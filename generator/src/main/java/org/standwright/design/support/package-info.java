/** What a carcass stands on: casters, levelers, a plinth, pads. */
package org.standwright.design.support;
