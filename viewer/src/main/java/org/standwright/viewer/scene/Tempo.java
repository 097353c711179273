package org.standwright.viewer.scene;

import javafx.animation.AnimationTimer;

/** Watches how fast pictures follow each other while the eye is moved by hand. */
final class Tempo extends AnimationTimer {
    private static final double NANOSECONDS = 1e9;

    /** Fewer pictures a second than this look jerky. */
    private static final double SLOW = 20;

    /** With so many there is time to spare. */
    private static final double FAST = 55;

    private static final int PICTURES = 5;

    private final Runnable whenSlow;
    private boolean slow;
    private boolean running;
    private int pictures;
    private long since;
    private double rate;

    /** @param whenSlow done when it turns out to be slow */
    Tempo(Runnable whenSlow) {
        this.whenSlow = whenSlow;
    }

    /** Whether the screen was too slow lately. */
    boolean isSlow() {
        return slow;
    }

    /** The eye begins to move, or still does. */
    void move() {
        if (!running) {
            running = true;
            pictures = 0;
            rate = 0;
            start();
        }
    }

    /** The eye rests. */
    void rest() {
        running = false;
        stop();
        slow = slow && rate < FAST;
    }

    @Override
    public void handle(long now) {
        if (pictures == 0) {
            since = now;
        }
        if (pictures == PICTURES) {
            judge(pictures * NANOSECONDS / (now - since));
            pictures = 0;
            since = now;
        }
        pictures++;
    }

    private void judge(double measured) {
        rate = measured;
        if (!slow && measured < SLOW) {
            slow = true;
            whenSlow.run();
        }
    }
}
