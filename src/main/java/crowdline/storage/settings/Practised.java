package crowdline.storage.settings;

import java.time.LocalDate;

/**
 * A practice flight that was flown, and how many things went well in it.
 *
 * @param level 1 to 4
 * @param day when
 * @param act what it is called
 * @param flight its number, from 1
 * @param plan where the plan broke
 * @param steps being in step
 * @param calls calls on time
 * @param talk not talking over what is to be heard
 * @param duties duties
 */
public record Practised(
        int level, LocalDate day, String act, long flight, Well plan, Well steps, Well calls, Well talk, Well duties) {

    /** The hardest level. */
    private static final int HARDEST = 4;

    public Practised {
        if (level < 1 || level > HARDEST) {
            throw new IllegalArgumentException("a level is 1 to " + HARDEST + ", not " + level);
        }
        if (act.isBlank() || flight < 1) {
            throw new IllegalArgumentException("a practice flight is one of an act, counted from 1");
        }
    }

    /**
     * How many of the things there were went well.
     *
     * @param well 0 to {@code of}
     */
    public record Well(int well, int of) {
        /** Nothing of that kind was to be done. */
        public static final Well NOTHING = new Well(0, 0);

        public Well {
            if (well < 0 || well > of) {
                throw new IllegalArgumentException(well + " of " + of + " cannot have gone well");
            }
        }
    }
}
