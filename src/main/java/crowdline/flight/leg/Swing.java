package crowdline.flight.leg;

/** How the nose turns in a fall. */
interface Swing {
    /** κ, tuned. */
    double WEATHERCOCK = 2;

    /** c, tuned with it. */
    double DAMPING = 0.6;

    /** The rate of the angle, rad/s: prescribed, or the coordinate itself. */
    double rateRadPerS(double angleRateRadPerS);

    /**
     * The acceleration of the angle, rad/s².
     *
     * @param sine of the angle from the nose to the motion, in the sense in which the nose turns
     */
    double radPerS2(double angleRateRadPerS, double speedMps, double sine);

    /** Turns at this rate all the time, rad/s. */
    static Swing steady(double rateRadPerS) {
        return new Swing() {
            @Override
            public double rateRadPerS(double angleRate) {
                return rateRadPerS;
            }

            @Override
            public double radPerS2(double angleRate, double speed, double sine) {
                return 0;
            }
        };
    }

    /**
     * Thrown over by the wind from behind.
     *
     * <p>φ'' = κ (v/L)² sin(angle from nose to motion) − c (v/L) φ', from a few degrees off the vertical. κ is tail area
     * times arm times lift slope over the moment of inertia, about 0.5 for a light aeroplane with the stick held in the
     * middle, and more with the elevator over; 2 is tuned so that the slide runs a couple of fuselage lengths, which is
     * common practice, no source.
     *
     * @param lengthM of the fuselage, metres
     */
    static Swing weathercock(double lengthM) {
        return new Swing() {
            @Override
            public double rateRadPerS(double angleRate) {
                return angleRate;
            }

            @Override
            public double radPerS2(double angleRate, double speed, double sine) {
                double perS = speed / lengthM;
                return WEATHERCOCK * perS * perS * sine - DAMPING * perS * angleRate;
            }
        };
    }
}
