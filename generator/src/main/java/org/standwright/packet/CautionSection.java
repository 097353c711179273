package org.standwright.packet;

import java.util.List;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;

/** Printed with every stand, whatever its findings. Figures only where a published source stands behind them. */
final class CautionSection implements Section {
    private static final List<String> CAUTIONS = List.of(
            "Measure your own machine: base, feet, height of its table or spindle, mass, bolt holes. Data in a preset or "
                    + "a catalogue may be of another model or year.",
            "Disconnect the machine from power before mounting, moving, adjusting or reaching into it.",
            "Guards stay on. Saws keep hood, spreader and guards (29 CFR 1910.213). On a bench grinder the work rest "
                    + "stays within 3.2 mm (1/8 in) of the wheel and the tongue guard within 6.4 mm (1/4 in) "
                    + "(29 CFR 1910.215).",
            "A machine made for a fixed place is anchored so that it cannot walk or tip (29 CFR 1910.212(b)). Lock every "
                    + "caster before work. Tall or top-heavy stands are fixed to studs, never to drywall alone; a drawer "
                    + "full of tools moves the centre of mass when it is open: open one at a time.",
            "Wood dust: collect it at the machine and wear a respirator that fits. Limits: NIOSH recommends 1 mg/m³ over "
                    + "10 hours; OSHA permits 15 mg/m³ total and 5 mg/m³ respirable dust.",
            "Lifting: the NIOSH lifting equation (Pub. 94-110) allows 23 kg (51 lb) in the best posture and less in any "
                    + "other. A sheet of 4 × 8 ft plywood 23/32 in thick weighs 31.3 kg (69 lb): two people. Lift the "
                    + "machine with helpers or a hoist.",
            "Electrical: keep the space before panels and disconnects free. Run no cord through a drawer or where a "
                    + "slide or caster can pinch it. Outlets inside cabinets only where local code allows; wiring is for "
                    + "licensed practice.",
            "Sawing: eye and ear protection, a support for both sides of every cut, nothing trapped between blade and "
                    + "fence.",
            "These pages are arithmetic for planning, not an engineer's approval. The machine's manual, local codes and "
                    + "licensed practice come before anything printed here.");

    @Override
    public void print(Contents contents, Flow flow) {
        flow.freshPage();
        flow.heading("Cautions");
        CAUTIONS.forEach(caution -> flow.item(Mark.BOX_ONLY, caution));
    }
}
