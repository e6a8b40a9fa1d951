package crowdline.edit.act;

import crowdline.show.figure.Asked;
import crowdline.show.figure.Asked.Hand;
import crowdline.show.figure.Asked.Place;
import crowdline.show.figure.Placing.Heading;
import org.jspecify.annotations.Nullable;

/** One thing told about a figure. Null takes it back: it is assumed again. */
public sealed interface Pin {
    /** What it is called, as in "Pin the height of the loop". */
    String word();

    /** Whether it takes back what was told. */
    boolean isFree();

    /** Whether it says how the catalogue's shape is drawn, and so nothing of a shape of one's own. */
    default boolean isOfCatalogue() {
        return false;
    }

    /** What is asked of the figure with it. */
    Asked on(Asked asked);

    /** How often, or how many rolls or turns. */
    record Count(@Nullable Double times) implements Pin {
        @Override
        public boolean isOfCatalogue() {
            return true;
        }

        @Override
        public String word() {
            return "number";
        }

        @Override
        public boolean isFree() {
            return times == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withCount(times);
        }
    }

    /** At which end, or in the middle. */
    record Where(@Nullable Place place) implements Pin {
        @Override
        public String word() {
            return "place";
        }

        @Override
        public boolean isFree() {
            return place == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withPlace(place);
        }
    }

    /** Where its middle is, metres along the display line to the commentator's right. */
    record Along(@Nullable Double metres) implements Pin {
        @Override
        public String word() {
            return "place";
        }

        @Override
        public boolean isFree() {
            return metres == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withAlongM(metres);
        }
    }

    /** Feet above the datum at which it begins. */
    record Height(@Nullable Double feet) implements Pin {
        @Override
        public String word() {
            return "height";
        }

        @Override
        public boolean isFree() {
            return feet == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withHeightFt(feet);
        }
    }

    /** Knots at which it begins. */
    record Speed(@Nullable Double knots) implements Pin {
        @Override
        public String word() {
            return "speed";
        }

        @Override
        public boolean isFree() {
            return knots == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withKt(knots);
        }
    }

    /** How long it takes, seconds. */
    record Length(@Nullable Double seconds) implements Pin {
        @Override
        public boolean isOfCatalogue() {
            return true;
        }

        @Override
        public String word() {
            return "length";
        }

        @Override
        public boolean isFree() {
            return seconds == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withSeconds(seconds);
        }
    }

    /** When it begins by the list's clock, seconds from the beginning of the act. */
    record Begins(@Nullable Double seconds) implements Pin {
        @Override
        public String word() {
            return "time";
        }

        @Override
        public boolean isFree() {
            return seconds == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withBeginsS(seconds);
        }
    }

    /** Which way the pilot turns or rolls. */
    record Side(@Nullable Hand hand) implements Pin {
        @Override
        public boolean isOfCatalogue() {
            return true;
        }

        @Override
        public String word() {
            return "side";
        }

        @Override
        public boolean isFree() {
            return hand == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withSide(hand);
        }
    }

    /** Which way it begins. */
    record Way(@Nullable Heading heading) implements Pin {
        @Override
        public String word() {
            return "direction";
        }

        @Override
        public boolean isFree() {
            return heading == null;
        }

        @Override
        public Asked on(Asked asked) {
            return asked.withHeading(heading);
        }
    }
}
