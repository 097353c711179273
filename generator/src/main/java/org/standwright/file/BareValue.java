package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * What a value means that stands where an object may stand too: the schema's keyword "x-bare" names the one field of it
 * that the value is, and of a family the member.
 *
 * @param member an object that chooses the member, if there is a choice, and says no more
 * @param field the field that the value is
 * @param place what the schema says about that field
 */
public record BareValue(ObjectNode member, String field, SchemaPlace place) {

    static BareValue of(SchemaPlace family, JsonNode keyword) {
        var member = JsonNodeFactory.instance.objectNode();
        if (keyword.has("kind")) {
            member.set("kind", keyword.get("kind"));
        }
        var field = keyword.get("field").asText();
        return new BareValue(member, field, family.fields(member).get(field));
    }
}
