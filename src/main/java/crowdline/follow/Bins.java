package crowdline.follow;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.leg.Sample;
import crowdline.show.figure.Element;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The predicted flight cut into bins of phase: where the aircraft is in each, and how it moves. Never changes. */
final class Bins {
    /** Seconds of predicted time in a bin; a figure has a whole number of bins. */
    static final double WIDTH_S = 0.2;
    /** Seconds of readings over which a climb is taken, back from the last. */
    static final double CHORD_S = 1.0;

    /** Seconds before and after the middle of a bin between which its speed is taken. */
    private static final double HALF_SPAN_S = 0.1;
    /** Metres a second: a line that comes nearer to its goal more slowly does not wait for it. */
    private static final double LEVEL_MPS = 4;
    /** Metres a second squared, across the path: below it the path is straight. */
    private static final double STRAIGHT_MPS2 = 2.5;
    /** Metres a second: a path flown more slowly is never straight, as at the top of a figure. */
    private static final double SLOW_MPS = 20;
    /** Metres a second: a figure that climbs or sinks faster does more than turn round. */
    private static final double NEARLY_LEVEL_MPS = 16;

    /** Metres a second downwards, from which an aircraft that goes straight down falls. */
    private static final double FALLS_MPS = 15;
    /** Share of that by which it may go along the ground meanwhile. */
    private static final double STEEPEST_SHARE = 0.15;

    /** Radians of heading: a figure that turns through less does not turn round. */
    private static final double ROUND_RAD = 2;
    /** Share of the speed over the ground that is along the A-axis, where a way leads along it. */
    private static final double ALONG_SHARE = 0.95;
    /** Metres above the datum of a place on the ground, at most. */
    private static final double GROUND_M = 15;
    /** Seconds of straight flight in to where the first figure after a timed one begins. */
    private static final double LEAD_S = 6;

    final int size;
    final int figures;
    /** First bin of each figure, and one more for the end. */
    final int[] first;

    final int[] figure;
    final double[] xM;
    final double[] yM;
    final double[] zM;
    final double[] vxMps;
    final double[] vyMps;
    final double[] vzMps;
    /** Where nothing is predicted but a duration. */
    final boolean[] timed;
    /** Straight: such a line is cut short or drawn out to fit. */
    final boolean[] elastic;
    /** Where the aircraft goes straight down, so that it may come out of it either way. */
    final boolean[] falls;
    /** Of a straight line flown to a place, a height or a speed, the bin after it; 0 elsewhere. */
    final int[] lineEnd;
    /** Whether such a line is flown to a speed, and so for as long as that takes. */
    final boolean[] toSpeed;
    /** Whether such a line is flown to a height and not to a place on the A-axis. */
    final boolean[] toHeight;
    /** Such a height above the datum, or place on the A-axis, metres. */
    final double[] goalM;
    /**
     * Of each figure of which only the time is known, the first bin of the last way to what follows: straight in to where
     * that begins. Of a way from one figure to the next, the first bin of its end. The bin after the figure where there is
     * none.
     */
    final int[] leadFrom;
    /** Of each figure, the airspeed predicted where it begins and where it ends, metres a second. */
    final double[] startMps;

    final double[] endMps;
    /** Of each bin of such a way, what it keeps to about then; null of all others. */
    private final @Nullable Way[] ways;

    /** Of each figure, whether it only turns the aircraft round in nearly level flight, in whatever room that takes. */
    final boolean[] round;

    Bins(Flight flight) {
        List<FigureFlight> flown = flight.figures();
        figures = flown.size();
        first = new int[figures + 1];
        for (int f = 0; f < figures; f++) {
            first[f + 1] = first[f] + binsOf(flown.get(f));
        }
        size = first[figures];
        figure = new int[size];
        xM = new double[size];
        yM = new double[size];
        zM = new double[size];
        vxMps = new double[size];
        vyMps = new double[size];
        vzMps = new double[size];
        timed = new boolean[size];
        elastic = new boolean[size];
        falls = new boolean[size];
        lineEnd = new int[size];
        toSpeed = new boolean[size];
        toHeight = new boolean[size];
        goalM = new double[size];
        leadFrom = Arrays.copyOfRange(first, 1, figures + 1);
        round = new boolean[figures];
        startMps = new double[figures];
        endMps = new double[figures];
        ways = new Way[size];
        speeds(flown, flight.samples());
        PredictedPath path = new PredictedPath(flight.samples());
        for (int f = 0; f < figures; f++) {
            fill(f, flown.get(f), path);
        }
        for (int f = 0; f + 1 < figures; f++) {
            if (timed[first[f]] && !timed[first[f + 1]]) {
                lead(f);
            } else if (isWay(f)) {
                leadFrom[f] = Math.max(first[f + 1] - (int) Math.round(LEAD_S / WIDTH_S), half(f));
                endsAtPlace(f);
            }
        }
    }

    private void speeds(List<FigureFlight> flown, List<Sample> samples) {
        int i = 0;
        for (int f = 0; f < figures; f++) {
            while (i + 1 < samples.size() && samples.get(i).tS() < flown.get(f).startS()) {
                i++;
            }
            startMps[f] = samples.get(i).speedMps();
            while (i + 1 < samples.size() && samples.get(i).tS() < flown.get(f).endS()) {
                i++;
            }
            endMps[f] = samples.get(i).speedMps();
        }
    }

    /** The last seconds of a timed figure lead straight to where the next one begins. */
    private void lead(int f) {
        int next = first[f + 1];
        leadFrom[f] = Math.max(first[f], next - (int) Math.round(LEAD_S / WIDTH_S));
        for (int i = leadFrom[f]; i < next; i++) {
            double beforeS = (next - i) * WIDTH_S;
            vxMps[i] = vxMps[next];
            vyMps[i] = vyMps[next];
            vzMps[i] = 0;
            xM[i] = xM[next] - beforeS * vxMps[next];
            yM[i] = yM[next] - beforeS * vyMps[next];
            zM[i] = zM[next];
        }
    }

    /**
     * What is flown along the A-axis at the end of a way is a line to where the next figure begins, if it is to no other
     * place, and however long it takes; a way that is such a line from its start waits for nothing else.
     */
    private void endsAtPlace(int f) {
        int end = first[f + 1];
        if (lineEnd[end - 1] > 0) {
            return;
        }
        int from = end;
        while (from > first[f] && isAlong(from - 1) && vxMps[from - 1] * vxMps[end - 1] > 0) {
            from--;
        }
        for (int i = from; i < end; i++) {
            elastic[i] = true;
            lineEnd[i] = end;
            goalM[i] = end < size ? xM[end] : xM[end - 1];
        }
        leadFrom[f] = from == first[f] ? end : Math.min(leadFrom[f], from);
    }

    private boolean isAlong(int i) {
        return Math.abs(vxMps[i]) > ALONG_SHARE * Math.hypot(vxMps[i], vyMps[i]);
    }

    /** Square of the predicted speed, (m/s)². */
    double squareOfSpeed(int i) {
        return vxMps[i] * vxMps[i] + vyMps[i] * vyMps[i] + vzMps[i] * vzMps[i];
    }

    private static int binsOf(FigureFlight figure) {
        return (int) Math.max(1, Math.round(figure.durationS() / WIDTH_S));
    }

    private void fill(int f, FigureFlight flown, PredictedPath path) {
        double width = flown.durationS() / (first[f + 1] - first[f]);
        for (int i = first[f]; i < first[f + 1]; i++) {
            double t = flown.startS() + (i - first[f] + 0.5) * width;
            figure[i] = f;
            timed[i] = !flown.simulated() || !flown.completed();
            xM[i] = path.x(t);
            yM[i] = path.y(t);
            zM[i] = path.z(t);
            double from = Math.max(t - HALF_SPAN_S, 0);
            double to = t + HALF_SPAN_S;
            double span = to - from;
            vxMps[i] = (path.x(to) - path.x(from)) / span;
            vyMps[i] = (path.y(to) - path.y(from)) / span;
            vzMps[i] = (path.z(to) - path.z(from)) / span;
            elastic[i] = !timed[i] && straight(i, path, t);
            falls[i] =
                    !timed[i] && vzMps[i] < -FALLS_MPS && Math.hypot(vxMps[i], vyMps[i]) < STEEPEST_SHARE * -vzMps[i];
        }
        for (ElementFlight element : flown.elements()) {
            if (!timed[first[f]] && element.ends() instanceof ElementFlight.AtHeight line) {
                line(f, element, flown.startS(), width, true, line.heightM());
            } else if (!timed[first[f]] && element.ends() instanceof ElementFlight.AtPlace line) {
                line(f, element, flown.startS(), width, false, line.alongM());
            } else if (!timed[first[f]]
                    && element.element() instanceof Element.Line line
                    && line.until() == Element.Until.KNOTS) {
                lineToSpeed(f, element.startS(), element.endS(), flown.startS(), width);
            } else if (!timed[first[f]] && element.element() instanceof Element.Spin) {
                lineToSpeed(f, element.startS(), element.lastLegS(), flown.startS(), width);
            }
        }
        round[f] = !timed[first[f]] && turnsRound(f);
        if (!timed[first[f]] && ((round[f] && turnsBack(f)) || leadsOn(flown))) {
            for (int i = first[f]; i < first[f + 1]; i++) {
                ways[i] = Way.around(this, i);
            }
        }
    }

    /** Whether a figure leads back the way it came, as no turn does that is flown to be looked at. */
    private boolean turnsBack(int f) {
        return vxMps[first[f]] * vxMps[first[f + 1] - 1] < 0;
    }

    private static boolean leadsOn(FigureFlight flown) {
        return !flown.elements().isEmpty()
                && flown.elements().stream()
                        .allMatch(e -> e.element() instanceof Element.Run || e.element() instanceof Element.Reposition);
    }

    /** Whether a figure only leads from one to the next. */
    boolean isWay(int f) {
        return ways[first[f]] != null;
    }

    /** What such a figure keeps to about the time of one of its bins; null of all others. */
    @Nullable
    Way way(int bin) {
        return ways[bin];
    }

    /** Marks the straight bins up to the end of a line; a line of no length has one, for it may be needed after all. */
    private void line(int f, ElementFlight line, double fromS, double width, boolean height, double goal) {
        int end = Math.min(first[f] + (int) Math.round((line.endS() - fromS) / width), first[f + 1]);
        int start = Math.max(first[f] + (int) Math.round((line.startS() - fromS) / width), first[f]);
        start = Math.max(first[f], Math.min(start, end - 1));
        for (int i = end - 1; i >= start; i--) {
            if (Math.abs(height ? vzMps[i] : vxMps[i]) < LEVEL_MPS) {
                continue;
            }
            elastic[i] = true;
            lineEnd[i] = end;
            toHeight[i] = height;
            goalM[i] = goal;
        }
    }

    /** The same of a line that ends when the aircraft is as fast, or as slow, as it has to be. */
    private void lineToSpeed(int f, double startS, double endS, double fromS, double width) {
        int end = Math.min(first[f] + (int) Math.round((endS - fromS) / width), first[f + 1]);
        int start = Math.max(first[f] + (int) Math.round((startS - fromS) / width), first[f]);
        for (int i = Math.max(first[f], Math.min(start, end - 1)); i < end; i++) {
            elastic[i] = true;
            lineEnd[i] = end;
            toSpeed[i] = true;
        }
    }

    private boolean turnsRound(int f) {
        double turned = 0;
        double most = 0;
        for (int i = first[f] + 1; i < first[f + 1]; i++) {
            if (Math.abs(vzMps[i]) > NEARLY_LEVEL_MPS) {
                return false;
            }
            double cross = vxMps[i - 1] * vyMps[i] - vyMps[i - 1] * vxMps[i];
            double dot = vxMps[i - 1] * vxMps[i] + vyMps[i - 1] * vyMps[i];
            turned += Math.atan2(cross, dot);
            most = Math.max(most, Math.abs(turned));
        }
        return most > ROUND_RAD;
    }

    /** Whether the path hardly bends; what only changes the speed does not bend it. */
    private boolean straight(int i, PredictedPath path, double tS) {
        double v = Math.sqrt(vxMps[i] * vxMps[i] + vyMps[i] * vyMps[i] + vzMps[i] * vzMps[i]);
        double ax = change(path.x(tS - HALF_SPAN_S), path.x(tS), path.x(tS + HALF_SPAN_S));
        double ay = change(path.y(tS - HALF_SPAN_S), path.y(tS), path.y(tS + HALF_SPAN_S));
        double az = change(path.z(tS - HALF_SPAN_S), path.z(tS), path.z(tS + HALF_SPAN_S));
        double along = v < 1 ? 0 : (ax * vxMps[i] + ay * vyMps[i] + az * vzMps[i]) / v;
        double bend2 = Math.max(0, ax * ax + ay * ay + az * az - along * along);
        return v > SLOW_MPS && bend2 < STRAIGHT_MPS2 * STRAIGHT_MPS2;
    }

    /** Change of speed between two spans of time, from the places at their ends, m/s². */
    private static double change(double before, double now, double after) {
        return (after - 2 * now + before) / (HALF_SPAN_S * HALF_SPAN_S);
    }

    /** Whether a bin is on the way in to the next figure. */
    boolean isLead(int bin) {
        return bin >= leadFrom[figure[bin]];
    }

    /** Whether a timed figure or a way may come to its end at once, by way of the flight in to the next. */
    boolean mayEndEarly(int bin) {
        int lead = leadFrom[figure[bin]];
        return lead < first[figure[bin] + 1] && bin < lead;
    }

    /** Whether the act ends with a landing. */
    boolean lands() {
        int f = figures - 1;
        return timed[size - 1] && zM[size - 1] < GROUND_M && zM[first[f]] > zM[size - 1] + GROUND_M;
    }

    /** First bin of a figure's second half. */
    int half(int f) {
        return first[f] + length(f) / 2;
    }

    int length(int f) {
        return first[f + 1] - first[f];
    }
}
