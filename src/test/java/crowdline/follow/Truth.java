package crowdline.follow;

import java.util.ArrayList;
import java.util.List;

/** What an aircraft of the trials really did. */
final class Truth {
    /** Not a figure of the plan. */
    static final int UNKNOWN = -2;

    static final int BEFORE = -1;

    record Instant(double tS, V3 place, V3 groundMps) {}

    record Flown(int figure, double startS, double endS) {}

    final List<Instant> instants = new ArrayList<>();
    final List<Flown> flown = new ArrayList<>();

    /** Something that is not in the plan was flown; with what came just before, if that was not either, it is one. */
    void unplanned(double startS, double endS) {
        int last = flown.size() - 1;
        boolean goesOn = last >= 0 && flown.get(last).figure() == UNKNOWN;
        double fromS = goesOn ? flown.remove(last).startS() : startS;
        flown.add(new Flown(UNKNOWN, fromS, endS));
    }

    double endS() {
        return flown.get(flown.size() - 1).endS();
    }

    Instant at(double tS) {
        int low = 0;
        int high = instants.size() - 1;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (instants.get(middle).tS() < tS) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return instants.get(low);
    }

    /** The figure flown at a time, or {@link #UNKNOWN}, or {@link #BEFORE}; the last one also after its end. */
    int figureAt(double tS) {
        int figure = BEFORE;
        for (Flown f : flown) {
            if (f.startS() <= tS) {
                figure = f.figure();
            }
        }
        return figure;
    }

    /** The same flight with everything slower by a factor on time. */
    Truth stretched(double factor) {
        Truth slow = new Truth();
        for (Instant i : instants) {
            slow.instants.add(
                    new Instant(i.tS() * factor, i.place(), i.groundMps().times(1 / factor)));
        }
        for (Flown f : flown) {
            slow.flown.add(new Flown(f.figure(), f.startS() * factor, f.endS() * factor));
        }
        return slow;
    }
}
