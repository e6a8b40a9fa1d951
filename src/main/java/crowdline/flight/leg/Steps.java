package crowdline.flight.leg;

/** Counts the steps that integrators take: how much was flown, whatever time that took. For one thread. */
public final class Steps {
    private long taken;

    void take() {
        taken++;
    }

    /** How many were taken so far. */
    public long taken() {
        return taken;
    }
}
