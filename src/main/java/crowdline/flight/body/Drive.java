package crowdline.flight.body;

import crowdline.show.aircraft.Engine;

/** What drives a body, with all its engines together. */
public sealed interface Drive permits Propeller, Jet, NoDrive {
    /** That of an airframe's engine with a share of the power it is said to have. */
    static Drive of(Engine engine, double ofPower) {
        if (engine instanceof Engine.Propeller propeller) {
            return Propeller.of(propeller, ofPower);
        }
        if (engine instanceof Engine.Jet jet) {
            return Jet.of(jet, ofPower);
        }
        return NoDrive.NONE;
    }

    /**
     * Force along the nose in newtons; below 0 where it holds back.
     *
     * @param speedMps airspeed along the nose, m/s; below 0 when sliding backwards
     * @param rhoKgM3 air density
     * @param share of full power, 0 to 1; 0 is idle
     */
    double thrustN(double speedMps, double rhoKgM3, double share);

    /** Torque on the airframe at a share of full power in newton metres, to the right as the pilot sees it. */
    double torqueNm(double rhoKgM3, double share);
}
