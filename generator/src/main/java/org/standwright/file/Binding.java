package org.standwright.file;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonSubTypes.Type;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.util.StdConverter;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import org.standwright.design.Content;
import org.standwright.design.Content.EqualDrawers;
import org.standwright.design.Content.FillDrawers;
import org.standwright.design.Content.GivenDrawers;
import org.standwright.design.Support;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.Pointer;
import org.standwright.file.text.Problems;
import org.standwright.part.Grain;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/** Makes records of a checked tree: fields go to components by name, families to their member by "kind". */
final class Binding {
    private static final ObjectMapper MAPPER = JsonMapper.builder()
            .addModule(new Jdk8Module())
            .addMixIn(Support.class, SupportFamily.class)
            .addMixIn(Content.class, ContentFamily.class)
            .addMixIn(Grain.class, GrainWords.class)
            .addMixIn(SheetGood.class, SheetIsFlat.class)
            .addMixIn(Money.class, MoneyIsText.class)
            // notes and headers; the schema has refused every other unknown field
            .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
            .build();

    private Binding() {}

    /** @throws DesignFileException when a record refuses values that the schema lets pass */
    static Object bind(JsonNode values, FileKind kind, JsonText json) {
        try {
            return MAPPER.treeToValue(values, kind.type());
        } catch (JsonMappingException e) {
            throw new DesignFileException(refused(e, json));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e); // a tree in memory has no syntax
        }
    }

    private static FileProblem refused(JsonMappingException e, JsonText json) {
        var problems = new Problems(json.file(), json.positions());
        var at = "";
        for (var step : e.getPath()) {
            at = step.getFieldName() == null
                    ? Pointer.child(at, step.getIndex())
                    : Pointer.child(at, step.getFieldName());
        }
        return problems.about(
                at, e.getCause() == null ? e.getOriginalMessage() : e.getCause().getMessage());
    }

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @Type(value = Support.Casters.class, name = "casters"),
        @Type(value = Support.Levelers.class, name = "levelers"),
        @Type(value = Support.Plinth.class, name = "plinth"),
        @Type(value = Support.None.class, name = "none")
    })
    private interface SupportFamily {}

    @JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
    @JsonSubTypes({
        @Type(value = GivenDrawers.class, name = "drawers"),
        @Type(value = EqualDrawers.class, name = "equal-drawers"),
        @Type(value = FillDrawers.class, name = "filled-drawers")
    })
    private interface ContentFamily {}

    private enum GrainWords {
        @JsonProperty("along-length")
        ALONG_LENGTH,
        @JsonProperty("none")
        NONE
    }

    @JsonDeserialize(converter = SheetBuilder.class)
    private interface SheetIsFlat {}

    private static final class SheetBuilder extends StdConverter<SheetFields, SheetGood> {
        @Override
        public SheetGood convert(SheetFields fields) {
            return fields.toSheetGood();
        }
    }

    private abstract static class MoneyIsText {
        @JsonCreator
        static Money parse(String text) {
            return Money.parse(text);
        }
    }
}
