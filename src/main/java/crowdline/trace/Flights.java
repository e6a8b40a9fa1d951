package crowdline.trace;

import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;

/** The flights of a log: what was taxied, or left standing, is none, nor what comes after a long silence the same. */
final class Flights {
    /** Seconds: without a place for longer, it is another flight. */
    private static final double SILENT_S = 300;
    /** Seconds as slow as on the ground, after which it has landed. */
    private static final double SLOW_S = 30;
    /** Of the speed at which it stalls, over the ground, against any wind it would be flown in. Common practice, no source. */
    private static final double FLIES = 0.5;
    /** Seconds over which speed is taken. */
    private static final double SPAN_S = 5;
    /** Seconds: noise of places that are nearer in time is taken for speed. */
    private static final double STEP_S = 0.9;
    /** Metres above the lowest so far: there nobody lands, however slow it is or its receiver says. Common practice, no source. */
    private static final double HIGH_M = 300;

    private Flights() {}

    /** @param stallMps at which the aircraft stalls */
    static List<List<Reading>> in(List<Reading> readings, double stallMps) {
        boolean[] flies = flies(readings, FLIES * stallMps);
        List<List<Reading>> flights = new ArrayList<>();
        List<Reading> flight = new ArrayList<>();
        List<Reading> slow = new ArrayList<>();
        for (int i = 0; i < flies.length; i++) {
            Reading r = readings.get(i);
            double sinceS = flight.isEmpty()
                    ? 0
                    : r.tS() - flight.get(flight.size() - 1).tS();
            boolean silent = i > 0 && r.tS() - readings.get(i - 1).tS() > SILENT_S;
            if (silent || (!slow.isEmpty() && sinceS > SLOW_S)) {
                add(flights, flight);
                flight = new ArrayList<>();
                slow = new ArrayList<>();
            }
            if (flies[i]) {
                // At the top of a stall turn it was slow, and flew all the same.
                flight.addAll(slow);
                flight.add(r);
                slow.clear();
            } else if (!flight.isEmpty()) {
                slow.add(r);
            }
        }
        add(flights, flight);
        return flights;
    }

    private static void add(List<List<Reading>> flights, List<Reading> flight) {
        if (flight.size() > 1
                && flight.get(flight.size() - 1).tS() - flight.get(0).tS() > SPAN_S) {
            flights.add(flight);
        }
    }

    /** Whether it moves so fast about each reading, or is high. */
    private static boolean[] flies(List<Reading> readings, double mps) {
        int n = readings.size();
        double[] wayM = new double[n];
        int last = 0;
        for (int i = 1; i < n; i++) {
            wayM[i] = wayM[i - 1];
            if (readings.get(i).tS() - readings.get(last).tS() >= STEP_S) {
                wayM[i] += apartM(readings.get(last), readings.get(i));
                last = i;
            }
        }
        boolean[] flies = new boolean[n];
        int from = 0;
        int to = 0;
        double lowestM = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double t = readings.get(i).tS();
            double heightM = readings.get(i).heightM();
            lowestM = Math.min(lowestM, heightM);
            while (t - readings.get(from).tS() > SPAN_S) {
                from++;
            }
            while (to < n - 1 && readings.get(to).tS() - t < SPAN_S) {
                to++;
            }
            double seconds = readings.get(to).tS() - readings.get(from).tS();
            flies[i] = heightM > lowestM + HIGH_M || (seconds > 0 && wayM[to] - wayM[from] > mps * seconds);
        }
        return flies;
    }

    private static double apartM(Reading one, Reading other) {
        double x = other.alongM() - one.alongM();
        double y = other.awayM() - one.awayM();
        double z = other.heightM() - one.heightM();
        return Math.sqrt(x * x + y * y + z * z);
    }
}
