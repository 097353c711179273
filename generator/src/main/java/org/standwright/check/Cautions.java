package org.standwright.check;

import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;

/** What is said with everything that is made, whatever its findings. Figures only where a published source stands behind them. */
public final class Cautions {
    /** In the order in which a maker meets them. */
    public static final List<Caution> STAND = List.of(
            new Caution(
                    "Measure your own machine; a preset may be of another model or year.",
                    "Measure your own machine: base, feet, height of its table or spindle, mass, bolt holes. Data in a "
                            + "preset or a catalogue may be of another model or year."),
            new Caution(
                    "Disconnect the machine before mounting, moving, adjusting or reaching into it.",
                    "Disconnect the machine from power before mounting, moving, adjusting or reaching into it."),
            new Caution(
                    "Guards stay on; a grinder's work rest within 3.2 mm (1/8 in), its tongue guard within 6.4 mm (1/4 in)"
                            + " of the wheel (29 CFR 1910.213, 1910.215).",
                    "Guards stay on. Saws keep hood, spreader and guards (29 CFR 1910.213). On a bench grinder the work "
                            + "rest stays within 3.2 mm (1/8 in) of the wheel and the tongue guard within 6.4 mm "
                            + "(1/4 in) (29 CFR 1910.215)."),
            new Caution(
                    "Anchor a machine made for a fixed place (29 CFR 1910.212(b)), lock every caster, fix tall stands to"
                            + " studs, open one drawer at a time.",
                    "A machine made for a fixed place is anchored so that it cannot walk or tip (29 CFR 1910.212(b)). "
                            + "Lock every caster before work. Tall or top-heavy stands are fixed to studs, never to "
                            + "drywall alone; a drawer full of tools moves the centre of mass when it is open: open one "
                            + "at a time."),
            new Caution(
                    "Wood dust: collect it at the machine, wear a respirator that fits (NIOSH: 1 mg/m³ over 10 hours).",
                    "Wood dust: collect it at the machine and wear a respirator that fits. Limits: NIOSH recommends "
                            + "1 mg/m³ over 10 hours; OSHA permits 15 mg/m³ total and 5 mg/m³ respirable dust."),
            new Caution(
                    "Lifting: 23 kg (51 lb) in the best posture and less in any other (NIOSH Pub. 94-110); helpers or a"
                            + " hoist for more.",
                    "Lifting: the NIOSH lifting equation (Pub. 94-110) allows 23 kg (51 lb) in the best posture and less "
                            + "in any other. A sheet of 4 × 8 ft plywood 23/32 in thick weighs 31.3 kg (69 lb): two "
                            + "people. Lift the machine with helpers or a hoist."),
            new Caution(
                    "Electrical: panels and disconnects stay free, no cord where it can be pinched; wiring is for licensed"
                            + " practice.",
                    "Electrical: keep the space before panels and disconnects free. Run no cord through a drawer or where "
                            + "a slide or caster can pinch it. Outlets inside cabinets only where local code allows; "
                            + "wiring is for licensed practice."),
            new Caution(
                    "Sawing: eye and ear protection, both sides of a cut supported, nothing trapped at the fence.",
                    "Sawing: eye and ear protection, a support for both sides of every cut, nothing trapped between blade "
                            + "and fence."),
            new Caution(
                    "The machine's manual, local codes and licensed practice come before anything said here.",
                    "The machine's manual, local codes and licensed practice come before anything printed here."),
            new Caution(
                    "All of this is arithmetic for planning, not an engineer's approval.",
                    "All of this is arithmetic for planning, not an engineer's approval: it knows only what was entered."));

    /** With walls of cleats, in the order in which a maker meets them. */
    public static final List<Caution> WALL = List.of(
            new Caution(
                    "Find studs, cables and pipes before you drive a screw; never drive one right above, below or beside"
                            + " an electrical box unseen.",
                    "Find studs, cables and pipes before driving a screw. Cables usually run upright above and below "
                            + "boxes, and sometimes level between them (common practice, no source). Switch the circuit "
                            + "off where you are not sure."),
            new Caution(
                    "Electrical: the working space before a panel stays free (NEC 110.26), no box is buried; wiring and"
                            + " box extenders are for licensed practice. Not legal advice.",
                    "Electrical: the working space before a panel stays free and is not for storage (NEC 110.26(A), as "
                            + "quoted; your own code comes first). No box is buried behind a cleat or a holder; wiring "
                            + "and box extenders are for licensed practice. This is not legal advice."),
            new Caution(
                    "Screws hold in studs, never in plasterboard alone; anchors in steel studs and masonry carry what"
                            + " their maker says.",
                    "Screws hold in studs, never in plasterboard alone. In steel studs and masonry anchors carry what "
                            + "their maker says, in sound material and set as told. Pull each strip hard before "
                            + "anything hangs on it."),
            new Caution(
                    "A rip with the blade tilted: away from the fence, both strips supported, nothing trapped, push"
                            + " block, guards as the manual says.",
                    "A rip with the blade tilted: the blade leans away from the fence, both strips are supported, "
                            + "nothing is trapped, hands stay behind a push block, guards stay as the saw's manual says "
                            + "(29 CFR 1910.213). Eye and ear protection."),
            new Caution(
                    "Bevels are sharp: take the tips off before strips are handled.",
                    "Sharp bevels cut: take the tips off before strips are handled and hung."),
            new Caution(
                    "Heavy things low, nothing heavy over a place where somebody works; lift holders off with both hands,"
                            + " empty where they are heavy.",
                    "Heavy things hang low, and nothing heavy over a place where somebody works. Lift a holder off with "
                            + "both hands, empty where it is heavy. The NIOSH lifting equation (Pub. 94-110) allows "
                            + "23 kg (51 lb) in the best posture and less in any other."),
            new Caution(
                    "Solvents, oily rags and chargers hang away from heaters, motors, grinders and panels.",
                    "Solvents, oily rags and chargers hang away from heaters, motors, grinders and panels; oily rags "
                            + "go into a closed metal can (common practice, no source)."),
            new Caution(
                    "Wood dust: collect it at the saw, wear a respirator that fits (NIOSH: 1 mg/m³ over 10 hours).",
                    "Wood dust: collect it at the saw and wear a respirator that fits. Limits: NIOSH recommends 1 mg/m³ "
                            + "over 10 hours; OSHA permits 15 mg/m³ total and 5 mg/m³ respirable dust."),
            new Caution(
                    "Local codes, makers' data and licensed practice come before anything said here.",
                    "Local codes, makers' data for screws and anchors, and licensed practice come before anything "
                            + "printed here."),
            new Caution(
                    "All of this is arithmetic for planning, not an engineer's approval.",
                    "All of this is arithmetic for planning, not an engineer's approval: it knows only what was "
                            + "entered, and nothing of what is inside your wall."));

    /** Those that go with this piece of furniture. */
    public static List<Caution> of(Furniture furniture) {
        return furniture.accept(new FurnitureVisitor<>() {
            @Override
            public List<Caution> stand(Stand stand) {
                return STAND;
            }

            @Override
            public List<Caution> wall(CleatWall wall) {
                return WALL;
            }
        });
    }

    /**
     * One of them.
     *
     * @param brief for a screen of text
     * @param words for paper
     */
    public record Caution(String brief, String words) {}

    private Cautions() {}
}
