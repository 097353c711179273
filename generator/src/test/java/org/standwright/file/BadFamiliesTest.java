package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.file.text.DesignFileException;

/** Families, places, contents and machines that a maker got wrong. */
class BadFamiliesTest {
    private static final String HEIGHT = "\"900 mm\"";
    private static final String CONTENTS = "[{ \"kind\": \"drawers\", \"fronts\": [90, \"100 mm\"] }]";
    private static final String SLIDES = "{ \"kind\": \"slides\", \"slide\": \"slide-45-full\" }";
    private static final String FIT = "\"fit\": \"0.15 mm\"";
    private static final String GAP = "\"gap\": 3";
    private static final String MACHINE = "\"machine\": \"thickness-planer\"";
    private static final String BAYS = "  \"bays\"";
    private static final String LAYERS = "\"layers\": 2";
    private static final String CASTER = "\"caster\": \"caster-100\"";

    static Stream<Arguments> heights() {
        return Stream.of(
                bad(
                        HEIGHT,
                        "[900]",
                        "line 7, column 20: field \"workingHeight\" is a list, but must be a length or an object. Write it like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        HEIGHT,
                        "true",
                        "line 7, column 20: field \"workingHeight\" is true, but must be a length or an object. Write it like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"given\" }",
                        "line 7, column 3: field \"workingHeight.height\": missing. Add it (floor to the machine's work surface), written like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        HEIGHT,
                        "{ \"height\": 900 }",
                        "line 7, column 3: field \"workingHeight.kind\": missing. Add it (kind of it), written like \"given\" or \"elbow\" or \"beside\"."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"elbow\", \"elbow\": 1100, \"work\": \"hard\" }",
                        "line 7, column 62: field \"workingHeight.work\" is \"hard\", but must be \"precise\", \"light\" or \"heavy\"."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"elbow\", \"elbow\": \"11 m\", \"work\": \"light\" }",
                        "line 7, column 48: field \"workingHeight.elbow\" is \"11 m\", but must be 600 mm to 1500 mm. The nearest is 1500 mm."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"elbow\", \"height\": 900, \"elbow\": 1100, \"work\": \"light\" }",
                        "line 7, column 39: field \"workingHeight.height\": no such field here. Use \"note\" or \"shoes\"."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"beside\", \"surface\": \"bench\" }",
                        "line 7, column 3: field \"workingHeight.surfaceHeight\": missing. Add it (height of that surface above the floor), written like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"beside\", \"surface\": \"bench\", \"surfaceHeight\": 880, \"below\": -2 }",
                        "line 7, column 91: field \"workingHeight.below\" is -2 mm, but must be 0 mm to 500 mm. The nearest is 0 mm."),
                bad(
                        HEIGHT,
                        "{ \"kind\": \"given\", \"height\": true }",
                        "line 7, column 49: field \"workingHeight.height\" is true, but must be a length. Write it like \"876 mm\" or \"34 1/2 in\"."));
    }

    static Stream<Arguments> places() {
        return Stream.of(
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"turn\": 45 }",
                        "line 6, column 53: field \"place.turn\" is 45, but must be one of the numbers 0, 90, 180, 270."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"turn\": \"90\" }",
                        "line 6, column 53: field \"place.turn\" is \"90\", but must be one of the numbers 0, 90, 180, 270. Write it without quotes."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"turn\": 90.5 }",
                        "line 6, column 53: field \"place.turn\" is 90.5, but must be one of the numbers 0, 90, 180, 270."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"margins\": { \"front\": -301 } }",
                        "line 6, column 67: field \"place.margins.front\" is -301 mm, but must be -300 mm to 1500 mm. The nearest is -300 mm."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"margins\": { \"behind\": 20 } }",
                        "line 6, column 58: field \"place.margins.behind\": no such field here. Use \"note\", \"front\", \"back\", \"left\" or \"right\"."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"margins\": 50 }",
                        "line 6, column 56: field \"place.margins\" is 50, but must be an object. Put its fields in braces { }."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"shims\": { \"least\": 2, \"usual\": 1, \"most\": 5 } }",
                        "line 6, column 54: field \"place.shims\": least 2.0, usual 1.0 and most 5.0 mm must rise. Give the height at its lowest, as planned and at its highest."),
                bad(
                        MACHINE,
                        MACHINE + ", \"place\": { \"shims\": 3 }",
                        "line 6, column 54: field \"place.shims\" is 3, but must be an object. Put its fields in braces { }."),
                bad(
                        MACHINE,
                        MACHINE + ", \"layout\": \"mirored\"",
                        "line 6, column 44: field \"layout\" is \"mirored\", but must be \"as-written\" or \"mirrored\". Did you mean \"mirrored\"?"));
    }

    static Stream<Arguments> families() {
        return Stream.of(
                bad(
                        FIT,
                        FIT + ", \"joint\": \"dado\"",
                        "line 10, column 99: field \"carcass.joint\" is \"dado\", but must be an object. Put its fields in braces { }."),
                bad(
                        FIT,
                        FIT + ", \"joint\": { \"kind\": \"dowel\" }",
                        "line 10, column 109: field \"carcass.joint.kind\" is \"dowel\", but must be \"dado\", \"screws\", \"dowels\" or \"connectors\". Did you mean \"dowels\"?"),
                bad(
                        FIT,
                        FIT + ", \"joint\": { \"kind\": \"dowels\" }",
                        "line 10, column 90: field \"carcass.joint.dowel\": missing. Add it (a fluted wooden dowel: the name of a preset, a preset with fields that replace its own, or all fields), written like \"dowel-8x30\"."),
                bad(
                        FIT,
                        FIT + ", \"joint\": { \"kind\": \"screws\", \"dowel\": \"dowel-8x30\" }",
                        "line 10, column 119: field \"carcass.joint.dowel\": no such field here. Use \"note\"."),
                bad(
                        SLIDES,
                        "\"slide-45-full\"",
                        "line 24, column 13: field \"drawers.hang\" is \"slide-45-full\", but must be an object. Put its fields in braces { }."),
                bad(
                        SLIDES,
                        "{ \"kind\": \"runners\", \"slide\": \"slide-45-full\" }",
                        "line 24, column 5: field \"drawers.hang.bar\": missing. Add it (bar stock: a strip of solid wood as it is bought: the name of a preset, a preset with fields that replace its own, or all fields), written like \"bar-20x20\".\nline 24, column 34: field \"drawers.hang.slide\": no such field here. Use \"note\" or \"bar\"."),
                bad(
                        SLIDES,
                        "{ \"kind\": \"slides\", \"slide\": \"bar-20x20\" }",
                        "line 24, column 42: field \"drawers.hang.slide\" is \"bar-20x20\", but must be the name of a slide preset. \"bar-20x20\" is a bar."),
                bad(
                        GAP,
                        GAP + ", \"grip\": { \"kind\": \"pull\", \"pull\": \"pull-69\" }",
                        "line 26, column 49: field \"drawers.grip.pull\" is \"pull-69\", but must be the name of a pull preset. Did you mean \"pull-96\"?"),
                bad(
                        GAP,
                        GAP + ", \"grip\": { \"kind\": \"notch\", \"width\": 5 }",
                        "line 26, column 51: field \"drawers.grip.width\" is 5 mm, but must be 20 mm to 600 mm. The nearest is 20 mm."),
                bad(
                        CASTER,
                        CASTER + ", \"bed\": \"strip\"",
                        "line 9, column 66: field \"support.bed\" is \"strip\", but must be \"strips\" or \"doubled-bottom\". Did you mean \"strips\"?"),
                bad(
                        CASTER,
                        CASTER + ", \"others\": \"caster-10\"",
                        "line 9, column 69: field \"support.others\" is \"caster-10\", but must be the name of a caster preset. Did you mean \"caster-100\"?"));
    }

    static Stream<Arguments> contents() {
        return Stream.of(
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"shelf\" }]",
                        "line 17, column 49: field \"bays[0].contents[0].kind\" is \"shelf\", but must be \"drawers\", \"equal-drawers\", \"graduated-drawers\", \"filled-drawers\", \"open\", \"door\", \"clear\" or \"divided\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"graduated-drawers\", \"count\": 3, \"ratio\": 0.8 }]",
                        "line 17, column 91: field \"bays[0].contents[0].ratio\" is 0.8, but must be 1 to 2. The nearest is 1."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"graduated-drawers\", \"count\": 3, \"ratio\": \"1.2\" }]",
                        "line 17, column 91: field \"bays[0].contents[0].ratio\" is \"1.2\", but must be a plain number. Write it without quotes and unit."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"open\", \"shelves\": 3 }]",
                        "line 17, column 68: field \"bays[0].contents[0].shelves\" is 3, but must be an object. Put its fields in braces { }."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"open\", \"shelves\": { \"kind\": \"fixed\", \"count\": 11 } }]",
                        "line 17, column 96: field \"bays[0].contents[0].shelves.count\" is 11, but must be 1 to 10. The nearest is 10."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"open\", \"shelves\": { \"kind\": \"movable\", \"count\": 2 } }]",
                        "line 17, column 78: field \"bays[0].contents[0].shelves.kind\" is \"movable\", but must be \"fixed\" or \"adjustable\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"door\", \"hinge\": \"hinge-35\" }]",
                        "line 17, column 66: field \"bays[0].contents[0].hinge\" is \"hinge-35\", but must be the name of a hinge preset. Use \"hinge-35-half-overlay\", \"hinge-35-inset\", \"hinge-35-overlay\", \"hinge-butt-2-inch\" or \"hinge-butt-50\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"door\", \"hinge\": { \"preset\": \"hinge-35-inset\", \"opening\": 90 } }]",
                        "line 17, column 57: field \"bays[0].contents[0].hinge.style\": missing. Add it (with a cup in the door, or with two leaves), written like \"concealed\" or \"butt\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"door\", \"hinge\": { \"name\": \"x\", \"length\": 50, \"leaf\": 17, \"thickness\": 1, \"screws\": 3 } }]",
                        "line 17, column 57: field \"bays[0].contents[0].hinge.style\": missing. Add it (with a cup in the door, or with two leaves), written like \"concealed\" or \"butt\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"door\", \"hinge\": \"hinge-butt-50\", \"hung\": \"top\" }]",
                        "line 17, column 91: field \"bays[0].contents[0].hung\" is \"top\", but must be \"left\", \"right\" or \"pair\"."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"clear\" }]",
                        "line 17, column 39: field \"bays[0].contents[0].use\": missing. Add it (what it is kept clear for, such as 'motor' or 'vacuum')."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"divided\", \"bays\": [{ \"contents\": [{ \"kind\": \"open\" }] }] }]",
                        "line 17, column 68: field \"bays[0].contents[0].bays\" is a list, but must hold at least 2. Add one in the brackets [ ]."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"divided\", \"bays\": [{ \"contents\": [{ \"kind\": \"open\" }] }, { \"contents\": [{ \"kind\": \"equal-drawers\" }] }] }]",
                        "line 17, column 122: field \"bays[0].contents[0].bays[1].contents[0].count\": missing. Add it (number of drawers)."),
                bad(
                        CONTENTS,
                        "[{ \"kind\": \"equal-drawers\", \"count\": 3, \"least\": 30 }]",
                        "line 17, column 87: field \"bays[0].contents[0].least\" is 30 mm, but must be 40 mm to 1000 mm. The nearest is 40 mm."));
    }

    static Stream<Arguments> worktops() {
        return Stream.of(
                bad(
                        BAYS,
                        "  \"cutouts\": [{ \"kind\": \"round\", \"use\": \"cord\", \"in\": \"side\", \"x\": 1, \"y\": 1, \"diameter\": 60 }],\n  \"bays\"",
                        "line 16, column 55: field \"cutouts[0].in\" is \"side\", but must be \"worktop\" or \"back\"."),
                bad(
                        BAYS,
                        "  \"cutouts\": [{ \"kind\": \"square\", \"use\": \"cord\", \"in\": \"back\", \"x\": 1, \"y\": 1 }],\n  \"bays\"",
                        "line 16, column 25: field \"cutouts[0].kind\" is \"square\", but must be \"round\" or \"rectangular\"."),
                bad(
                        BAYS,
                        "  \"cutouts\": [{ \"kind\": \"round\", \"in\": \"back\", \"x\": 1, \"y\": 1, \"diameter\": 60 }],\n  \"bays\"",
                        "line 16, column 15: field \"cutouts[0].use\": missing. Add it (what goes through, such as 'dust hose' or 'cord')."),
                bad(
                        BAYS,
                        "  \"cutouts\": { },\n  \"bays\"",
                        "line 16, column 14: field \"cutouts\" is an object, but must be a list. Put its entries in brackets [ ]."),
                bad(
                        BAYS,
                        "  \"edges\": { \"fronts\": \"tape-06\" },\n  \"bays\"",
                        "line 16, column 24: field \"edges.fronts\" is \"tape-06\", but must be the name of an edging preset. Did you mean \"tape-0.6\"?"),
                bad(
                        BAYS,
                        "  \"edges\": { \"worktop\": \"tape-2\" },\n  \"bays\"",
                        "line 16, column 25: field \"edges.worktop\" is \"tape-2\", but must be an object. Put its fields in braces { }."),
                bad(
                        BAYS,
                        "  \"edges\": { \"fronts\": { \"preset\": \"tape-2\", \"style\": \"lipping\" } },\n  \"bays\"",
                        "line 16, column 55: field \"edges.fronts.style\" is \"lipping\", but must be \"tape\", as in the preset. Name a preset of this style."),
                bad(
                        LAYERS,
                        LAYERS
                                + ", \"plate\": { \"name\": \"P\", \"x\": 300, \"y\": 200, \"width\": 300, \"depth\": 230 }",
                        "line 13, column 18: field \"worktop.plate.thickness\": missing. Add it (thickness of the plate), written like \"876 mm\" or \"34 1/2 in\"."));
    }

    static Stream<Arguments> machines() {
        return Stream.of(
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"feed\": \"left\" }",
                        "line 6, column 54: field \"machine.feed\" is \"left\", but must be \"none\", \"front-to-back\", \"back-to-front\", \"left-to-right\" or \"right-to-left\"."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"reachable\": [\"front\", \"top\"] }",
                        "line 6, column 69: field \"machine.reachable[1]\" is \"top\", but must be \"front\", \"right\", \"back\" or \"left\"."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"workingForce\": { \"force\": \"150 kg\", \"height\": 110 } }",
                        "line 6, column 73: field \"machine.workingForce.force\" is \"150 kg\", but must have a unit of force, not 'kg'. Write it like 150 N, 1.2 kN or 34 lbf."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"workingForce\": { \"force\": 3000, \"height\": 110 } }",
                        "line 6, column 73: field \"machine.workingForce.force\" is 3000 N, but must be 0 N to 2000 N. The nearest is 2000 N."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"centreOfMass\": { \"x\": 280, \"y\": 190, \"lowest\": 240, \"highest\": 200 } }",
                        "line 6, column 62: field \"machine.centreOfMass\": a centre of mass from 240.0 to 200.0 mm is upside down. Give its lowest height first."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"mounting\": { \"flange\": 3, \"bolt\": 8, \"origin\": { \"x\": 0, \"y\": 0 }, \"holes\": [] } }",
                        "line 6, column 123: field \"machine.mounting.holes\" is an empty list, but must hold at least 1. Add one in the brackets [ ]."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"dustPort\": { \"hose\": 100, \"at\": { \"x\": 280, \"y\": 400 } } }",
                        "line 6, column 73: field \"machine.dustPort.at.z\": missing. Add it (above the underside of the base; less than 0 for a port that hangs below it), written like \"876 mm\" or \"34 1/2 in\"."),
                bad(
                        MACHINE,
                        "\"machine\": { \"preset\": \"thickness-planer\", \"reference\": { \"kind\": \"table\", \"height\": 100, \"highst\": 120 } }",
                        "line 6, column 93: field \"machine.reference.highst\": no such field here. Did you mean \"highest\"?"));
    }

    @ParameterizedTest(name = "{2}")
    @MethodSource({"heights", "places", "families", "contents", "worktops", "machines"})
    void saysWhereWhatAndWhatInstead(String old, String replacement, String expected) {
        var refused = catchThrowableOfType(
                DesignFileException.class, () -> SampleDesign.read(SampleDesign.with(old, replacement)));

        assertThat(refused.getMessage().replace("stand.json ", "")).isEqualTo(expected);
    }

    private static Arguments bad(String old, String replacement, String expected) {
        return arguments(old, replacement, expected);
    }
}
