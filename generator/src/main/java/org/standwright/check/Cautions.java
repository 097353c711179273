package org.standwright.check;

import java.util.List;

/** What is said with everything that is made, whatever its findings. Figures only where a published source stands behind them. */
public final class Cautions {
    /** In the order in which a maker meets them. */
    public static final List<Caution> ALL = List.of(
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

    /**
     * One of them.
     *
     * @param brief for a screen of text
     * @param words for paper
     */
    public record Caution(String brief, String words) {}

    private Cautions() {}
}
