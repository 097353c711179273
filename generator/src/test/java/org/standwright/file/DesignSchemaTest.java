package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Content;
import org.standwright.design.Cutout;
import org.standwright.design.CuttingPlan;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Edges;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Joint;
import org.standwright.design.KeptTogether;
import org.standwright.design.Loads;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.PlateOpening;
import org.standwright.design.RuleChoice;
import org.standwright.design.Savings;
import org.standwright.design.Screws;
import org.standwright.design.Shelves;
import org.standwright.design.Site;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.StockEntry;
import org.standwright.design.StockPlan;
import org.standwright.design.Support;
import org.standwright.design.WallDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.Worktop;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Cord;
import org.standwright.design.kit.Dowel;
import org.standwright.design.kit.DustPort;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Pull;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Screw;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.Slide;
import org.standwright.design.kit.WorkingForce;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Fixing;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Making;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Person;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.Wall;
import org.standwright.file.text.Pointer;
import org.standwright.geom.Vec3;
import org.standwright.part.Nominal;

class DesignSchemaTest {
    private static final JsonNode SCHEMA = DesignSchema.published().root().place();

    /** Properties that no record has, because nothing is built from them. */
    private static final Set<String> BESIDE_RECORDS =
            Set.of("$schema", "version", "kind", "note", "unit", "name", "preset", "nominal", "usualHeight");

    static Stream<Arguments> records() {
        return Stream.of(
                arguments("/$defs/stand", StandDesign.class),
                arguments("/$defs/stand/properties/place", Place.class),
                arguments("/$defs/stand/properties/place/properties/margins", Place.Margins.class),
                arguments("/$defs/stand/properties/place/properties/shims", Range.class),
                arguments("/$defs/stand/properties/plan", Plan.class),
                arguments("/$defs/stand/properties/carcass", CarcassPlan.class),
                arguments("/$defs/stand/properties/worktop", Worktop.class),
                arguments("/$defs/stand/properties/worktop/properties/overhang", Worktop.Overhang.class),
                arguments("/$defs/stand/properties/worktop/properties/plate", PlateOpening.class),
                arguments("/$defs/stand/properties/drawers", DrawerPlan.class),
                arguments("/$defs/stand/properties/screws", Screws.class),
                arguments("/$defs/saw", Saw.class),
                arguments("/$defs/saw/properties/breakDown", BreakDown.class),
                arguments("/$defs/router", Router.class),
                arguments("/$defs/router/properties/tabs", Router.Tabs.class),
                arguments("/$defs/stock", StockPlan.class),
                arguments("/$defs/stock/properties/keep", Keep.class),
                arguments("/$defs/cutting", CuttingPlan.class),
                arguments("/$defs/trim", TrimFields.class),
                arguments("/$defs/stock-entry", StockEntry.class),
                arguments("/$defs/together/allOf/0/then", KeptTogether.OneStrip.class),
                arguments("/$defs/together/allOf/1/then", KeptTogether.OneSheet.class),
                arguments("/$defs/together/allOf/2/then", KeptTogether.OneBlank.class),
                arguments("/$defs/stand/properties/savings", Savings.class),
                arguments("/$defs/stand/properties/savings/properties/width", Savings.Give.class),
                arguments("/$defs/stand/properties/savings/properties/depth", Savings.Give.class),
                arguments("/$defs/stand/properties/savings/properties/workingHeight", Savings.Give.class),
                arguments("/$defs/stand/properties/savings/properties/sheets/items", Savings.OtherSheet.class),
                arguments("/$defs/stand/properties/edges", Edges.class),
                arguments("/$defs/stand/properties/edges/properties/worktop", Edges.TopEdges.class),
                arguments("/$defs/working-height/allOf/0/then", WorkingHeight.Given.class),
                arguments("/$defs/working-height/allOf/1/then", WorkingHeight.Elbow.class),
                arguments("/$defs/working-height/allOf/2/then", WorkingHeight.Beside.class),
                arguments("/$defs/support/allOf/0/then", Support.Casters.class),
                arguments("/$defs/support/allOf/1/then", Support.Levelers.class),
                arguments("/$defs/support/allOf/2/then", Support.Plinth.class),
                arguments("/$defs/support/allOf/3/then", Support.None.class),
                arguments("/$defs/joint/allOf/0/then", Joint.Housed.class),
                arguments("/$defs/joint/allOf/1/then", Joint.Screwed.class),
                arguments("/$defs/joint/allOf/2/then", Joint.Doweled.class),
                arguments("/$defs/joint/allOf/3/then", Joint.Connected.class),
                arguments("/$defs/cutout/allOf/0/then", Cutout.Round.class),
                arguments("/$defs/cutout/allOf/1/then", Cutout.Rectangular.class),
                arguments("/$defs/bay", Bay.class),
                arguments("/$defs/content/allOf/0/then", Content.GivenDrawers.class),
                arguments("/$defs/content/allOf/1/then", Content.EqualDrawers.class),
                arguments("/$defs/content/allOf/2/then", Content.GraduatedDrawers.class),
                arguments("/$defs/content/allOf/3/then", Content.FillDrawers.class),
                arguments("/$defs/content/allOf/4/then", Content.Open.class),
                arguments("/$defs/content/allOf/5/then", Content.Door.class),
                arguments("/$defs/content/allOf/6/then", Content.Clear.class),
                arguments("/$defs/content/allOf/7/then", Content.Divided.class),
                arguments("/$defs/shelves", Shelves.class),
                arguments("/$defs/hang/allOf/0/then", Hang.Slides.class),
                arguments("/$defs/hang/allOf/1/then", Hang.Runners.class),
                arguments("/$defs/grip/allOf/0/then", Grip.Bought.class),
                arguments("/$defs/grip/allOf/1/then", Grip.Notch.class),
                arguments("/$defs/stand/properties/loads", Loads.class),
                arguments("/$defs/stand/properties/site", Site.class),
                arguments("/$defs/passage", Site.Passage.class),
                arguments("/$defs/stand/properties/steady", Steady.class),
                arguments("/$defs/rules/items", RuleChoice.class),
                arguments("/$defs/cleat-wall", WallDesign.class),
                arguments("/$defs/cleat-wall/properties/person", Person.class),
                arguments("/$defs/wall", Wall.class),
                arguments("/$defs/wall/properties/outline/items", Point2.class),
                arguments("/$defs/framing/allOf/0/then", Framing.WoodStuds.class),
                arguments("/$defs/framing/allOf/1/then", Framing.SteelStuds.class),
                arguments("/$defs/framing/allOf/2/then", Framing.Masonry.class),
                arguments("/$defs/obstacle", Obstacle.class),
                arguments("/$defs/swing", Swing.class),
                arguments("/$defs/cleat", Cleat.class),
                arguments("/$defs/rows/allOf/0/then", Rows.Fixed.class),
                arguments("/$defs/rows/allOf/1/then", Rows.Even.class),
                arguments("/$defs/rows/allOf/2/then", Rows.Reach.class),
                arguments("/$defs/rows/allOf/3/then", Rows.Densest.class),
                arguments("/$defs/fixing", Fixing.class),
                arguments("/$defs/making", Making.class),
                arguments("/$defs/things", Things.class),
                arguments("/$defs/spot", Spot.class),
                arguments("/$defs/holder/allOf/0/then", Holder.Shelf.class),
                arguments("/$defs/holder/allOf/1/then", Holder.Bin.class),
                arguments("/$defs/holder/allOf/2/then", Holder.Tray.class),
                arguments("/$defs/holder/allOf/3/then", Holder.Slots.class),
                arguments("/$defs/holder/allOf/4/then", Holder.Bores.class),
                arguments("/$defs/holder/allOf/5/then", Holder.Pegs.class),
                arguments("/$defs/holder/allOf/6/then", Holder.ClampBar.class),
                arguments("/$defs/holder/allOf/7/then", Holder.Hooks.class),
                arguments("/$defs/holder/allOf/8/then", Holder.Panel.class),
                arguments("/$defs/holder/allOf/9/then", Holder.Cabinet.class),
                arguments("/$defs/machine", Machine.class),
                arguments("/$defs/machine/properties/base", Size2.class),
                arguments("/$defs/machine/properties/envelope", Envelope.class),
                arguments("/$defs/machine/properties/reference", Reference.class),
                arguments("/$defs/machine/properties/centreOfMass", CentreOfMass.class),
                arguments("/$defs/machine/properties/mounting", Mounting.class),
                arguments("/$defs/machine/properties/mounting/properties/origin", Point2.class),
                arguments("/$defs/machine/properties/mounting/properties/holes/items", Point2.class),
                arguments("/$defs/machine/properties/workingForce", WorkingForce.class),
                arguments("/$defs/machine/properties/dustPort", DustPort.class),
                arguments("/$defs/machine/properties/dustPort/properties/at", Vec3.class),
                arguments("/$defs/machine/properties/cord", Cord.class),
                arguments("/$defs/sheet", SheetFields.class),
                arguments("/$defs/sheet/properties/nominal", Nominal.class),
                arguments("/$defs/sheet/properties/stiffness", SheetFields.Stiffness.class),
                arguments("/$defs/slide", Slide.class),
                arguments("/$defs/slide/properties/lengths/items", Slide.Size.class),
                arguments("/$defs/caster", Caster.class),
                arguments("/$defs/caster/properties/plate", Size2.class),
                arguments("/$defs/caster/properties/holes", Size2.class),
                arguments("/$defs/leveler", Leveler.class),
                arguments("/$defs/leveler/properties/height", Range.class),
                arguments("/$defs/plinth", Support.Plinth.class),
                arguments("/$defs/screw", Screw.class),
                arguments("/$defs/bar", Bar.class),
                arguments("/$defs/edging", EdgingFields.class),
                arguments("/$defs/hinge/allOf/0/then", Hinge.Concealed.class),
                arguments("/$defs/hinge/allOf/1/then", Hinge.Butt.class),
                arguments("/$defs/pull", Pull.class),
                arguments("/$defs/dowel", Dowel.class),
                arguments("/$defs/connector", Connector.class));
    }

    /** The draft's own meta-schema, as published by json-schema.org and packed with the validator. */
    @Test
    void obeysTheMetaSchemaOfDraft2020() {
        var meta = JsonSchemaFactory.getInstance(VersionFlag.V202012)
                .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));

        assertThat(meta.validate(SCHEMA)).isEmpty();
        assertThat(SCHEMA.path("$schema").asText()).isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }

    @ParameterizedTest
    @MethodSource("records")
    void hasAPropertyForEachRecordComponentAndNoOther(String place, Class<?> record) {
        var properties = names(SCHEMA.at(place), "properties");
        var components = Arrays.stream(record.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();

        assertThat(properties).containsAll(components);
        properties.removeAll(components);
        assertThat(BESIDE_RECORDS).containsAll(properties);
    }

    @ParameterizedTest
    @MethodSource("records")
    void requiresWhatHasNoDefaultAndIsNotOptional(String place, Class<?> record) {
        var expected = new TreeSet<String>();
        for (var component : record.getRecordComponents()) {
            var type = component.getType();
            boolean optional = Set.of(Optional.class, OptionalDouble.class, OptionalInt.class)
                    .contains(type);
            if (!optional && !hasDefault(property(SCHEMA.at(place), component.getName()))) {
                expected.add(component.getName());
            }
        }

        assertThat(names(SCHEMA.at(place), "required")).isEqualTo(expected);
    }

    @Test
    void describesNoObjectThatIsNoRecord() {
        var described = records().map(row -> (String) row.get()[0]).toList();
        var others = new TreeSet<>(places().keySet());
        others.removeIf(place -> !SCHEMA.at(place).has("properties") || place.contains("/if"));
        others.removeAll(described);
        others.removeIf(place -> place.matches("/\\$defs/given-\\w+/else"));

        assertThat(others)
                .containsExactlyInAnyOrder(
                        "",
                        "/$defs/working-height",
                        "/$defs/support",
                        "/$defs/together",
                        "/$defs/joint",
                        "/$defs/cutout",
                        "/$defs/content",
                        "/$defs/hang",
                        "/$defs/grip",
                        "/$defs/hinge",
                        "/$defs/framing",
                        "/$defs/rows",
                        "/$defs/holder");
    }

    @Test
    void allowsANoteInEveryObject() {
        for (var place : places().keySet()) {
            if (SCHEMA.at(place).has("additionalProperties")) {
                assertThat(names(SCHEMA.at(place), "properties")).as(place).contains("note");
            }
        }
        for (var kind : FileKind.words()) {
            assertThat(names(SCHEMA.at("/$defs/" + kind), "properties"))
                    .as(kind)
                    .contains("note");
        }
    }

    @Test
    void boundsEveryQuantity() {
        places().forEach((place, schema) -> {
            var unit = switch (schema.path("$ref").asText()) {
                case "#/$defs/length" -> "mm";
                case "#/$defs/mass" -> "kg";
                case "#/$defs/force" -> "N";
                default -> "";
            };
            if (!unit.isEmpty()) {
                double least = schema.path("x-min-" + unit).asDouble(Double.NaN);
                double most = schema.path("x-max-" + unit).asDouble(Double.NaN);
                assertThat(most).as(place).isGreaterThan(least);
                assertThat(least).as(place).isGreaterThanOrEqualTo(mayBeNegative(place) ? -3000 : 0);
            }
        });
    }

    /** Where a machine reaches over its base, or hangs below it. */
    private static boolean mayBeNegative(String place) {
        return place.matches(".*/(margins|at|holes/items|centreOfMass|outline/items)/properties/\\w+");
    }

    @Test
    void knowsEachOfItsOwnKeywords() {
        var used = new TreeSet<String>();
        places().values().forEach(schema -> schema.fieldNames().forEachRemaining(used::add));
        used.removeIf(name -> !name.startsWith("x-"));

        assertThat(DesignSchema.OWN_KEYWORDS).containsAll(used);
    }

    @Test
    void listsEveryKindOfFile() {
        var kinds = StreamSupport.stream(SCHEMA.at("/properties/kind/enum").spliterator(), false)
                .map(JsonNode::asText)
                .toList();

        assertThat(kinds).isEqualTo(FileKind.words());
    }

    @Test
    void isPublishedAsText() {
        assertThat(DesignFiles.schema()).startsWith("{").endsWith("}\n").contains("workingHeight");
    }

    private static boolean hasDefault(JsonNode property) {
        return property.has("default") || property.path("$ref").asText().equals("#/$defs/unit");
    }

    private static JsonNode property(JsonNode schema, String name) {
        return parts(schema).stream()
                .map(part -> part.path("properties").path(name))
                .filter(property -> !property.isMissingNode())
                .findFirst()
                .orElseThrow();
    }

    /** Names of the fields or entries under {@code keyword}, here and behind references. */
    private static Set<String> names(JsonNode schema, String keyword) {
        var names = new TreeSet<String>();
        for (var part : parts(schema)) {
            var found = part.path(keyword);
            found.fieldNames().forEachRemaining(names::add);
            if (found.isArray()) {
                found.forEach(entry -> names.add(entry.asText()));
            }
        }
        return names;
    }

    private static List<JsonNode> parts(JsonNode schema) {
        var parts = new ArrayList<>(List.of(schema, schema.path("else")));
        if (schema.has("$ref")) {
            parts.addAll(parts(SCHEMA.at(schema.get("$ref").asText().substring(1))));
        }
        return parts;
    }

    /** Every object in the schema, by its pointer. */
    private static TreeMap<String, JsonNode> places() {
        var places = new TreeMap<String, JsonNode>();
        collect("", SCHEMA, places);
        return places;
    }

    private static void collect(String pointer, JsonNode node, TreeMap<String, JsonNode> places) {
        if (node.isObject() && !pointer.endsWith("/properties") && !pointer.endsWith("/$defs")) {
            places.put(pointer, node);
        }
        for (var field : node.properties()) {
            if (!field.getKey().equals("default")) {
                collect(Pointer.child(pointer, field.getKey()), field.getValue(), places);
            }
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            collect(Pointer.child(pointer, i), node.get(i), places);
        }
    }
}
