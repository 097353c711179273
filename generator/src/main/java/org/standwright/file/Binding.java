package org.standwright.file;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.annotation.JsonDeserialize;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.util.StdConverter;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Edging;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.StandBox;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.Pointer;
import org.standwright.file.text.Problems;
import org.standwright.part.Colour;
import org.standwright.part.Grain;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/** Makes records of a checked tree: fields go to components by name, families to their member by "kind" or "style". */
final class Binding {
    private static final ObjectMapper MAPPER = Families.addTo(JsonMapper.builder())
            .addModule(new Jdk8Module())
            .addMixIn(Grain.class, GrainWords.class)
            .addMixIn(SheetGood.class, SheetIsFlat.class)
            .addMixIn(Edging.class, EdgingHasAStyle.class)
            .addMixIn(Money.class, MoneyIsText.class)
            .addMixIn(Colour.class, ColourIsText.class)
            .addMixIn(Trim.class, TrimHasSides.class)
            .addMixIn(Saw.First.class, FirstWords.class)
            .addMixIn(Router.Relief.class, ReliefWords.class)
            .addMixIn(StandBox.class, StandIsBuilt.class)
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

    private enum GrainWords {
        @JsonProperty("along-length")
        ALONG_LENGTH,
        @JsonProperty("none")
        NONE
    }

    private enum FirstWords {
        @JsonProperty("rip")
        RIP,
        @JsonProperty("crosscut")
        CROSSCUT,
        @JsonProperty("either")
        EITHER
    }

    private enum ReliefWords {
        @JsonProperty("dog-bone")
        DOG_BONE,
        @JsonProperty("t-bone")
        T_BONE,
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

    @JsonDeserialize(converter = EdgingBuilder.class)
    private interface EdgingHasAStyle {}

    private static final class EdgingBuilder extends StdConverter<EdgingFields, Edging> {
        @Override
        public Edging convert(EdgingFields fields) {
            return fields.toEdging();
        }
    }

    private abstract static class MoneyIsText {
        @JsonCreator
        static Money parse(String text) {
            return Money.parse(text);
        }
    }

    private abstract static class ColourIsText {
        @JsonCreator
        static Colour parse(String text) {
            return Colour.parse(text);
        }
    }

    @JsonDeserialize(converter = TrimBuilder.class)
    private interface TrimHasSides {}

    private static final class TrimBuilder extends StdConverter<TrimFields, Trim> {
        @Override
        public Trim convert(TrimFields fields) {
            return fields.toTrim();
        }
    }

    @JsonDeserialize(converter = StandBoxBuilder.class)
    private interface StandIsBuilt {}

    /** Builds the stand that stands before a wall, and takes the box around it. */
    private static final class StandBoxBuilder extends StdConverter<StandDesign, StandBox> {
        @Override
        public StandBox convert(StandDesign design) {
            var size = StandBuilder.build(design).assembly().box().size();
            return new StandBox(design.name(), size.x(), size.y(), size.z());
        }
    }
}
