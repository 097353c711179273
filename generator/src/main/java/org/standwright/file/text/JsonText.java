package org.standwright.file.text;

import com.fasterxml.jackson.databind.JsonNode;

/** The tree of one JSON text, and where everything in it stands. */
public record JsonText(String file, JsonNode root, Positions positions) {}
