package crowdline.glossary.drill;

/**
 * How well one thing is remembered, and when it is asked again: the algorithm SM-2. Source: P. A. Wozniak, Optimization of
 * learning, master's thesis, University of Technology in Poznan, 1990, section 3.2, as published on super-memory.com.
 *
 * @param repetitions how often in a row it was recalled, on different days; not below 0
 * @param easiness the E-Factor of the source, from 1.3; the larger, the longer until it is asked again
 * @param intervalDays whole days from {@code lastDay} until it is asked again; 0 for what was never recalled
 * @param lastDay the day it was asked last, in days since 1970-01-01
 */
public record Memory(int repetitions, double easiness, int intervalDays, long lastDay) {
    /** What nobody was asked yet: at once, with the source's first easiness. */
    public static final Memory NEW = new Memory(0, 2.5, 0, 0);

    /** Of the source: below it, things came back "annoyingly often". */
    private static final double LEAST_EASINESS = 1.3;
    /** Longer than any season; keeps the days a number that can be added to a date. */
    private static final int LONGEST_DAYS = 36_500;

    public Memory {
        if (repetitions < 0) {
            throw new IllegalArgumentException("repetitions must not be below 0, but are " + repetitions);
        }
        if (!(easiness >= LEAST_EASINESS && easiness <= 100)) {
            throw new IllegalArgumentException("easiness must be from 1.3 to 100, but is " + easiness);
        }
        if (intervalDays < 0 || intervalDays > LONGEST_DAYS) {
            throw new IllegalArgumentException("the interval must be from 0 to 36500 days, but is " + intervalDays);
        }
    }

    /**
     * After an answer. Where the source leaves it open, a fraction of a day is a day, as it says for intervals.
     *
     * @param answer how good it was
     * @param today in days since 1970-01-01
     */
    public Memory after(Answer answer, long today) {
        int missing = 5 - answer.quality();
        double changed = Math.max(LEAST_EASINESS, easiness + (0.1 - missing * (0.08 + missing * 0.02)));
        if (answer.quality() < 3) {
            // From the beginning, "without changing the E-Factor".
            return new Memory(0, easiness, 1, today);
        }
        int days = switch (repetitions) {
            case 0 -> 1;
            case 1 -> 6;
            default -> (int) Math.min(LONGEST_DAYS, Math.ceil(intervalDays * changed - 1e-9));
        };
        return new Memory(repetitions + 1, Math.min(changed, 100), days, today);
    }

    /** Whether it is to be asked on a day. */
    public boolean isDue(long today) {
        return today >= lastDay + intervalDays;
    }

    /** How good an answer was. */
    public enum Answer {
        /** "Perfect response". */
        PERFECT(5),
        /** "Correct response after a hesitation": recognised among others. */
        RIGHT(4),
        /** "Recalled with serious difficulty". */
        PARTLY(3),
        /** "Incorrect response; the correct one remembered". */
        WRONG(1);

        private final int quality;

        Answer(int quality) {
            this.quality = quality;
        }

        /** From 0 to 5, on the scale of the source. */
        public int quality() {
            return quality;
        }

        /** Good enough not to be asked again on the same day: the source repeats what was below four. */
        public boolean isGood() {
            return quality >= 4;
        }
    }
}
