package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import org.standwright.file.SchemaPlace;

/**
 * One field of a file.
 *
 * @param name its key, or its number in a list
 * @param place what the schema says about it
 * @param given its value in the file; missing when it is left out
 * @param standard the value that it has when it is left out; missing when there is none
 * @param required whether it must be given
 */
record Field(String name, SchemaPlace place, JsonNode given, JsonNode standard, boolean required) {

    boolean isGiven() {
        return !given.isMissingNode();
    }

    /** Its value, given or not. */
    JsonNode value() {
        return isGiven() ? given : standard;
    }
}
