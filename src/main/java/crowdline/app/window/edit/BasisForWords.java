package crowdline.app.window.edit;

import crowdline.console.words.WordsBasis;
import crowdline.loaded.LoadedShow;
import crowdline.show.Interpreting;
import crowdline.show.Speaker;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Interpreted;
import crowdline.speech.pace.PacedVoices;
import crowdline.speech.pace.Paces;
import crowdline.speech.pace.SpokenTime;
import crowdline.speech.pace.Voices;
import crowdline.speech.plain.RemarkHints;
import crowdline.speech.say.Spoken;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** What the words of a show are judged by: its catalogue, its predicted times, and the speaker's pace. */
public final class BasisForWords {
    private BasisForWords() {}

    /**
     * All of it, for a show that may be edited.
     *
     * @param now the show by which they are judged at the moment
     * @param paces of the moment
     */
    public static WordsBasis basis(Supplier<LoadedShow> now, Catalogue known, Supplier<Paces> paces) {
        Supplier<Catalogue> all = new Made<>(() -> now.get().show().figures(), known::with);
        Supplier<Spoken> spoken = new Made<>(() -> now.get().show().sayAs(), Spoken::new);
        return new WordsBasis(
                RemarkHints.tradeWords(all.get().entries()),
                figure -> RemarkHints.namesOf(figure, all.get()),
                text -> spoken.get().expand(text),
                voices(now, paces),
                (act, figure) -> lasts(now.get(), act, figure),
                figure -> all.get().nameOf(figure));
    }

    /** Those of the show and the paces of the moment. */
    private static Voices voices(Supplier<LoadedShow> now, Supplier<Paces> paces) {
        Supplier<Voices> newest = new Made<>(
                () -> List.of(now.get().show().sayAs(), now.get().show().speakers(), paces.get()),
                made -> new PacedVoices(now.get().show(), paces.get()));
        return new Voices() {
            @Override
            public SpokenTime time(String text) {
                return newest.get().time(text);
            }

            @Override
            public SpokenTime first(Remark remark, boolean shortForm) {
                return newest.get().first(remark, shortForm);
            }

            @Override
            public Optional<Interpreted> interpreted(Remark remark, boolean shortForm) {
                return newest.get().interpreted(remark, shortForm);
            }

            @Override
            public boolean isTimed(Speaker speaker) {
                return newest.get().isTimed(speaker);
            }

            @Override
            public Interpreting interpreting() {
                return newest.get().interpreting();
            }

            @Override
            public Optional<String> other(Remark remark) {
                return newest.get().other(remark);
            }
        };
    }

    /** Made anew only where what it is made of has changed. On the event thread. */
    private static final class Made<F, T> implements Supplier<T> {
        private final Supplier<F> from;
        private final Function<F, T> making;
        private F last;
        private T made;

        Made(Supplier<F> from, Function<F, T> making) {
            this.from = from;
            this.making = making;
            last = from.get();
            made = making.apply(last);
        }

        @Override
        public T get() {
            F now = from.get();
            if (!now.equals(last)) {
                last = now;
                made = making.apply(now);
            }
            return made;
        }
    }

    private static Optional<FigureTime> lasts(LoadedShow loaded, String actId, String figureId) {
        return loaded.show().act(actId).stream()
                .flatMap(act -> act.variants().stream())
                .flatMap(variant -> loaded.prediction(actId, variant.name()).stream())
                .flatMap(prediction -> prediction.times().figures().stream())
                .filter(time -> time.figureId().equals(figureId))
                .findFirst();
    }
}
