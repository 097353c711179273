/** One part at true size, for cutting and drilling by hand, or for any program that reads its lines. */
package org.standwright.router.template;
