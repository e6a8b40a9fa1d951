package crowdline.list.line;

import crowdline.measure.Must;
import org.jspecify.annotations.Nullable;

/** What somebody who reads a list knows that a piece of it means. */
public sealed interface Meaning {
    /** What a line is then; null if nothing is flown. */
    @Nullable
    ListLine of(ListLine line);

    /** What an aside is then; null if nothing is flown. */
    @Nullable
    ListLine of(Aside aside);

    /** Nothing that is flown. */
    record Nothing() implements Meaning {
        @Override
        public @Nullable ListLine of(ListLine line) {
            return null;
        }

        @Override
        public @Nullable ListLine of(Aside aside) {
            return null;
        }
    }

    /**
     * A figure.
     *
     * @param figure the catalogue's name
     */
    record Named(String figure) implements Meaning {
        public Named {
            Must.beSaid("name of a figure", figure);
        }

        @Override
        public ListLine of(ListLine line) {
            return line.takenFor(figure, line.count(), true);
        }

        @Override
        public ListLine of(Aside aside) {
            return aside.as(figure);
        }
    }

    /**
     * Something that is flown and that no catalogue has: it is only timed.
     *
     * @param words how to call it
     */
    record Own(String words) implements Meaning {
        public Own {
            Must.beSaid("words for what is flown", words);
        }

        @Override
        public ListLine of(ListLine line) {
            return line.called(words);
        }

        @Override
        public ListLine of(Aside aside) {
            return aside.called(words);
        }
    }
}
