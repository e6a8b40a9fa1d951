package crowdline.follow;

/** A chance with the moments of its offsets, as {@link Belief} keeps them. */
final class Moments {
    double chance;
    double along;
    double along2;
    double height;
    double height2;

    /** A chance of which nothing is known but how far it may be off. */
    static Moments of(double chance, double alongVarianceM2, double heightVarianceM2) {
        Moments m = new Moments();
        m.chance = chance;
        m.along2 = chance * alongVarianceM2;
        m.height2 = chance * heightVarianceM2;
        return m;
    }

    void clear() {
        chance = 0;
        along = 0;
        along2 = 0;
        height = 0;
        height2 = 0;
    }

    void set(Belief belief, int i) {
        chance = belief.chance[i];
        along = belief.along[i];
        along2 = belief.along2[i];
        height = belief.height[i];
        height2 = belief.height2[i];
    }

    void set(Moments m) {
        chance = m.chance;
        along = m.along;
        along2 = m.along2;
        height = m.height;
        height2 = m.height2;
    }

    void add(Moments m, double share) {
        chance += m.chance * share;
        along += m.along * share;
        along2 += m.along2 * share;
        height += m.height * share;
        height2 += m.height2 * share;
    }

    /** The offsets become less certain. */
    void widen(double alongVarianceM2, double heightVarianceM2) {
        along2 += chance * alongVarianceM2;
        height2 += chance * heightVarianceM2;
    }

    /** Another chance with both its offsets greater by so much. */
    void moved(Moments from, double alongM, double heightM) {
        chance = from.chance;
        along2 = from.along2 + alongM * (2 * from.along + chance * alongM);
        along = from.along + chance * alongM;
        height2 = from.height2 + heightM * (2 * from.height + chance * heightM);
        height = from.height + chance * heightM;
    }
}
