package org.standwright.viewer.scene.tools;

import javafx.animation.AnimationTimer;

/** Does something when what has changed by now is on the screen. */
final class AfterPulse extends AnimationTimer {
    private final Runnable work;
    private int pulses;

    private AfterPulse(Runnable work) {
        this.work = work;
    }

    static void run(Runnable work) {
        new AfterPulse(work).start();
    }

    /** Comes first in a pulse, so that only in the second one all of the first is done. */
    @Override
    public void handle(long now) {
        pulses++;
        if (pulses == 2) {
            stop();
            work.run();
        }
    }
}
