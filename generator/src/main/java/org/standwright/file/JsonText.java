package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;

/** The tree of one JSON text, and where everything in it stands. */
record JsonText(String file, JsonNode root, Positions positions) {}
