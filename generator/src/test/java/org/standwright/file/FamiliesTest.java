package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Content.EqualDrawers;
import org.standwright.design.Cutout;
import org.standwright.design.Edges;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Hung;
import org.standwright.design.Joint;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.PlateOpening;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Connector;
import org.standwright.design.kit.Cord;
import org.standwright.design.kit.Dowel;
import org.standwright.design.kit.DustPort;
import org.standwright.design.kit.Edging;
import org.standwright.design.kit.Feed;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Pull;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.WorkingForce;
import org.standwright.geom.Vec3;
import org.standwright.unit.Money;

/** What a file chooses by "kind" or "style", and what it may leave out. */
class FamiliesTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final String CONTENTS = "[{ \"kind\": \"drawers\", \"fronts\": [90, \"100 mm\"] }]";
    private static final String BUTT = "{ \"style\": \"butt\", \"name\": \"Butt hinge\", \"length\": 50, \"leaf\": 17,"
            + " \"thickness\": 1.5, \"screws\": 3 }";
    private static final Hinge BUTT_HINGE = new Hinge.Butt("Butt hinge", 50, 17, 1.5, 3);

    @Test
    void takesABareLengthForAGivenWorkingHeight() {
        var given = design("\"900 mm\"", "{ \"kind\": \"given\", \"height\": 900 }");

        assertThat(given.workingHeight()).isEqualTo(new WorkingHeight.Given(900));
        assertThat(given).isEqualTo(design("\"900 mm\"", "900"));
        assertThat(design("\"900 mm\"", "\"36 in\"").workingHeight().height()).isEqualTo(914.4);
    }

    @Test
    void findsTheWorkingHeightByElbowOrBesideASurface() {
        assertThat(design("\"900 mm\"", "{ \"kind\": \"elbow\", \"elbow\": 1104, \"work\": \"light\" }")
                        .workingHeight())
                .isEqualTo(new WorkingHeight.Elbow(1104, 25, Work.LIGHT));
        assertThat(design(
                                "\"900 mm\"",
                                "{ \"kind\": \"beside\", \"surface\": \"bench\", \"surfaceHeight\": \"880 mm\" }")
                        .workingHeight())
                .isEqualTo(new WorkingHeight.Beside("bench", 880, 0, 0));
    }

    @Test
    void placesTheMachineWhereTheFileSays() {
        assertThat(design().place())
                .isEqualTo(new Place(0, new Place.Margins(NONE, NONE, NONE, NONE), Optional.empty()));
        assertThat(design(
                                "\"plan\": { \"width\": 720, \"depth\": 560 }",
                                "\"place\": { \"turn\": 270, \"margins\": { \"back\": -20, \"left\": \"6 cm\" },"
                                        + " \"shims\": { \"least\": 0, \"usual\": 3, \"most\": 10 } },"
                                        + " \"layout\": \"mirrored\"")
                        .place())
                .isEqualTo(new Place(
                        270,
                        new Place.Margins(NONE, OptionalDouble.of(-20), OptionalDouble.of(60), NONE),
                        Optional.of(new Range(0, 3, 10))));
    }

    @Test
    void leavesOutWhatMostStandsDoWithout() {
        var stand = design("  \"plan\": { \"width\": 720, \"depth\": 560 },\n", "");

        assertThat(stand.plan().width()).isEmpty();
        assertThat(stand.plan().depth()).isEmpty();
        assertThat(stand.layout()).isEqualTo(Layout.AS_WRITTEN);
        assertThat(stand.carcass().joint()).isEqualTo(new Joint.Housed());
        assertThat(stand.worktop().plate()).isEmpty();
        assertThat(stand.cutouts()).isEmpty();
        assertThat(stand.drawers().grip()).isEqualTo(new Grip.Notch(100, 25));
        assertThat(stand.drawers().rounding()).isEmpty();
        assertThat(stand.edges())
                .isEqualTo(new Edges(
                        Optional.empty(),
                        Optional.empty(),
                        new Edges.TopEdges(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty())));
        assertThat(((Support.Casters) stand.support()).others()).isEmpty();
        assertThat(((Support.Casters) stand.support()).bed()).isEqualTo(Support.Bed.STRIPS);
    }

    @Test
    void readsEveryJoint() {
        var fit = "\"fit\": \"0.15 mm\"";

        assertThat(design(fit, fit + ", \"joint\": { \"kind\": \"screws\" }")
                        .carcass()
                        .joint())
                .isEqualTo(new Joint.Screwed());
        assertThat(design(
                                fit,
                                fit + ", \"joint\": { \"kind\": \"dowels\", \"dowel\":"
                                        + " { \"name\": \"Dowel\", \"diameter\": 8, \"length\": 30 } }")
                        .carcass()
                        .joint())
                .isEqualTo(new Joint.Doweled(new Dowel("Dowel", 8, 30)));
        assertThat(design(
                                fit,
                                fit + ", \"joint\": { \"kind\": \"connectors\", \"connector\": { \"name\": \"C\","
                                        + " \"length\": 50, \"thread\": 5, \"shank\": 7, \"head\": 10, \"headDepth\": 3 } }")
                        .carcass()
                        .joint())
                .isEqualTo(new Joint.Connected(new Connector("C", 50, 5, 7, 10, 3)));
    }

    @Test
    void readsRunnersAndEveryGrip() {
        var slides = "{ \"kind\": \"slides\", \"slide\": \"slide-45-full\" }";

        assertThat(design(
                                slides,
                                "{ \"kind\": \"runners\", \"bar\": { \"name\": \"Beech\", \"width\": 20, \"thickness\": 20,"
                                        + " \"density\": 700, \"length\": \"2.4 m\", \"price\": \"6.50 EUR\" } }")
                        .drawers()
                        .hang())
                .isEqualTo(new Hang.Runners(new Bar("Beech", 20, 20, 700, 2400, Optional.of(Money.parse("6.50 EUR")))));
        assertThat(design(
                                "\"gap\": 3",
                                "\"rounding\": 5, \"gap\": 3, \"grip\": { \"kind\": \"pull\", \"pull\":"
                                        + " { \"name\": \"Bow\", \"spacing\": 96, \"bore\": 5, \"projection\": 30 } }")
                        .drawers()
                        .grip())
                .isEqualTo(new Grip.Bought(new Pull("Bow", 96, 5, 30)));
        assertThat(design("\"gap\": 3", "\"gap\": 3, \"grip\": { \"kind\": \"notch\", \"width\": 80 }")
                        .drawers()
                        .grip())
                .isEqualTo(new Grip.Notch(80, 25));
    }

    @Test
    void readsEveryContentThatIsNoDrawer() {
        var contents = "[{ \"kind\": \"graduated-drawers\", \"count\": 3, \"ratio\": 1.25, \"least\": 60 },"
                + " { \"kind\": \"open\", \"height\": 200, \"shelves\": { \"kind\": \"adjustable\", \"count\": 2 } },"
                + " { \"kind\": \"door\", \"hinge\": " + BUTT + " },"
                + " { \"kind\": \"clear\", \"use\": \"motor\", \"hose\": \"60 mm\" },"
                + " { \"kind\": \"divided\", \"bays\": ["
                + "{ \"width\": 150, \"contents\": [{ \"kind\": \"open\" }] },"
                + "{ \"contents\": [{ \"kind\": \"equal-drawers\", \"count\": 2, \"most\": 120 }] }] }]";

        assertThat(design(CONTENTS, contents).bays().get(0).contents())
                .containsExactly(
                        new Content.GraduatedDrawers(3, 1.25, OptionalDouble.of(60), NONE),
                        new Content.Open(OptionalDouble.of(200), Optional.of(new Shelves(Shelves.Kind.ADJUSTABLE, 2))),
                        new Content.Door(NONE, BUTT_HINGE, Hung.LEFT, Optional.empty()),
                        new Content.Clear(NONE, "motor", OptionalDouble.of(60)),
                        new Content.Divided(
                                NONE,
                                List.of(
                                        new Bay(
                                                OptionalDouble.of(150),
                                                List.of(new Content.Open(NONE, Optional.empty()))),
                                        new Bay(NONE, List.of(new EqualDrawers(2, NONE, OptionalDouble.of(120)))))));
    }

    @Test
    void readsCutoutsPlateAndEdges() {
        var tape = "{ \"name\": \"Tape\", \"style\": \"tape\", \"thickness\": 0.6 }";
        var stand = design(
                "  \"bays\"",
                "  \"cutouts\": [{ \"kind\": \"round\", \"use\": \"cord\", \"in\": \"back\", \"x\": 90, \"y\": 80,"
                        + " \"diameter\": 60 }, { \"kind\": \"rectangular\", \"use\": \"chips\", \"in\": \"worktop\","
                        + " \"x\": 300, \"y\": 200, \"width\": 120, \"height\": 80 }],\n"
                        + "  \"edges\": { \"fronts\": " + tape + ", \"worktop\": { \"left\": " + tape + " } },\n"
                        + "  \"bays\"",
                "\"layers\": 2",
                "\"layers\": 2, \"plate\": { \"name\": \"Plate\", \"x\": 360, \"y\": 280, \"width\": 298,"
                        + " \"depth\": 235, \"thickness\": 9.5 }");

        assertThat(stand.cutouts())
                .containsExactly(
                        new Cutout.Round("cord", Cutout.In.BACK, 90, 80, 60),
                        new Cutout.Rectangular("chips", Cutout.In.WORKTOP, 300, 200, 120, 80, 0));
        assertThat(stand.worktop().plate()).contains(new PlateOpening("Plate", 360, 280, 298, 235, 9.5, 0, 0.5, 15));
        var edging = new Edging("Tape", Edging.Kind.TAPE, 0.6);
        assertThat(stand.edges().fronts()).contains(edging);
        assertThat(stand.edges().carcass()).isEmpty();
        assertThat(stand.edges().worktop().left()).contains(edging);
    }

    @Test
    void readsAllThatAMachineCanSay() {
        var machine = design("\"machine\": \"thickness-planer\"", """
                "machine": {
                    "name": "Planer", "base": { "width": 560, "depth": 380 }, "mass": 38,
                    "envelope": { "width": 660, "depth": 860, "height": 490, "left": 30, "front": 240 },
                    "reference": { "kind": "movable-table", "height": 100, "lowest": 90, "highest": 250 },
                    "centreOfMass": { "x": 280, "y": 190, "lowest": 200, "highest": 250 },
                    "mounting": {
                      "flange": 4, "bolt": 8, "origin": { "x": 20, "y": 20 },
                      "holes": [{ "x": 0, "y": 0 }, { "x": 520, "y": 340 }]
                    },
                    "workingForce": { "force": "150 N", "height": 130 },
                    "dustPort": { "hose": 100, "at": { "x": 280, "y": 430, "z": 300 } },
                    "cord": { "length": "2 m", "side": "right", "plug": 40 },
                    "reachable": ["left", "front"], "operator": "back", "feed": "front-to-back"
                  }""").machine();

        assertThat(machine.envelope().front()).hasValue(240);
        assertThat(machine.reference())
                .isEqualTo(new Reference(
                        Reference.Kind.MOVABLE_TABLE, 100, OptionalDouble.of(90), OptionalDouble.of(250)));
        assertThat(machine.centreOfMass()).contains(new CentreOfMass(280, 190, 200, 250));
        assertThat(machine.mounting())
                .contains(new Mounting(4, 8, new Point2(20, 20), List.of(new Point2(0, 0), new Point2(520, 340))));
        assertThat(machine.workingForce()).contains(new WorkingForce(150, 130));
        assertThat(machine.dustPort()).contains(new DustPort(100, new Vec3(280, 430, 300)));
        assertThat(machine.cord()).contains(new Cord(2000, Side.RIGHT, 40));
        assertThat(machine.reachable()).containsExactly(Side.LEFT, Side.FRONT);
        assertThat(machine.operator()).isEqualTo(Side.BACK);
        assertThat(machine.feed()).isEqualTo(Feed.FRONT_TO_BACK);
    }

    @Test
    void refusesAHingeOfAnotherStyleThanItsPreset() {
        var door = "[{ \"kind\": \"door\", \"hinge\": { \"preset\": \"hinge-35-overlay\", \"style\": \"butt\","
                + " \"screws\": 4 } }]";

        assertThatThrownBy(() -> design(CONTENTS, door))
                .hasMessage("stand.json line 17, column 107: field \"bays[0].contents[0].hinge.style\" is \"butt\", but"
                        + " must be \"concealed\", as in the preset. Name a preset of this style.");
    }

    /** The sample design with pairs of a text and its replacement. */
    private static StandDesign design(String... changes) {
        var text = SampleDesign.TEXT;
        for (int i = 0; i < changes.length; i += 2) {
            assertThat(text).contains(changes[i]);
            text = text.replace(changes[i], changes[i + 1]);
        }
        return SampleDesign.stand(text);
    }
}
