/** What would go wrong in the workshop: rules that read a stand and report findings. */
package org.standwright.check;
