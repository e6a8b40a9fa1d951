package crowdline.edit.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.edit.day.OwnGlossary.Merge;
import crowdline.show.Show;
import crowdline.show.Term;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class OwnGlossaryTest {
    private static final Catalogue CATALOGUE = CatalogueFile.shipped();
    private static final Term ROPE = Term.own("the rope", "The line nobody crosses.");

    private Show show;

    @BeforeEach
    void open() throws ShowFileException {
        show = Objects.requireNonNull(new ShowFile()
                        .read(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"))
                        .show())
                .withGlossary(List.of(), List.of());
    }

    private Show done(Edit edit) throws CannotBe {
        show = edit.of(show).show();
        return show;
    }

    private static CatalogueEntry loop(String look) {
        CatalogueEntry loop = CATALOGUE.find("loop").orElseThrow();
        return new CatalogueEntry(
                loop.name(),
                loop.aliases(),
                loop.family(),
                loop.whatItIs(),
                look,
                "",
                "",
                "",
                "",
                "",
                null,
                loop.minEntryKt(),
                loop.enters(),
                loop.elements());
    }

    @Test
    void wordIsAddedChangedRenamedAndTakenAwayByItsName() throws CannotBe {
        assertThat(OwnGlossary.term(null, ROPE).of(show).name()).isEqualTo("Explain the rope");
        done(OwnGlossary.term(null, ROPE));
        done(OwnGlossary.term("The  Rope", Term.own("the rope", "Behind it you are safe to stand.")));
        assertThat(show.terms()).extracting(Term::whatItIs).containsExactly("Behind it you are safe to stand.");
        done(OwnGlossary.term("the rope", Term.own("the line", "Behind it you may stand.")));
        assertThat(show.terms()).extracting(Term::name).containsExactly("the line");
        done(OwnGlossary.remove("THE LINE"));
        assertThat(show.terms()).isEmpty();
    }

    @Test
    void noWordIsExplainedTwice() throws CannotBe {
        done(OwnGlossary.term(null, ROPE));
        done(OwnGlossary.term(null, Term.own("marshal", "Who waves the bats.")));
        assertThatThrownBy(() -> done(OwnGlossary.term(null, Term.own("The rope", "Again."))))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("explains \"The rope\" already");
        assertThatThrownBy(() -> done(OwnGlossary.term("marshal", Term.own("the rope", "Again."))))
                .isInstanceOf(CannotBe.class);
        assertThat(show.terms()).hasSize(2);
    }

    @Test
    void figureHasTheShowsWordsOnce() throws CannotBe {
        done(OwnGlossary.figure(loop("Watch it close.")));
        done(OwnGlossary.figure(loop("Watch it meet its own smoke.")));
        assertThat(show.figures()).extracting(CatalogueEntry::lookFor).containsExactly("Watch it meet its own smoke.");
        assertThat(CATALOGUE.with(show.figures()).find("loop").orElseThrow().elements())
                .isEqualTo(CATALOGUE.find("loop").orElseThrow().elements());
    }

    @Test
    void whatHasNoOwnWordsLosesNone() {
        assertThatThrownBy(() -> done(OwnGlossary.remove("spin")))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("no words of its own for \"spin\"");
    }

    @Test
    void mergingAddsWhatIsNewAndLeavesConflictsUnlessTheOtherIsPreferred() throws CannotBe {
        done(OwnGlossary.term(null, ROPE));
        done(OwnGlossary.term(null, Term.own("marshal", "Who waves the bats.")));
        done(OwnGlossary.figure(loop("Mine.")));
        List<Term> others = List.of(
                Term.own("marshal", "Who waves the bats."),
                Term.own("The Rope", "The line the public stays behind."),
                Term.own("crash gate", "Where fire engines drive out."));
        Merge merge = OwnGlossary.compare(show, List.of(loop("Theirs.")), others);
        assertThat(merge.alike()).isEqualTo(1);
        assertThat(merge.terms()).extracting(Term::name).containsExactly("crash gate");
        assertThat(merge.conflicts())
                .extracting(c -> c.name() + ": " + c.mine() + " / " + c.theirs())
                .contains("The Rope: The line nobody crosses. / The line the public stays behind.")
                .hasSize(2);

        Show mine = merge.take(false).of(show).show();
        assertThat(mine.terms())
                .extracting(Term::whatItIs)
                .containsExactly("The line nobody crosses.", "Who waves the bats.", "Where fire engines drive out.");
        assertThat(mine.figures()).extracting(CatalogueEntry::lookFor).containsExactly("Mine.");

        Show theirs = merge.take(true).of(show).show();
        assertThat(theirs.terms())
                .extracting(Term::whatItIs)
                .containsExactly(
                        "The line the public stays behind.", "Who waves the bats.", "Where fire engines drive out.");
        assertThat(theirs.figures()).extracting(CatalogueEntry::lookFor).containsExactly("Theirs.");
    }

    @Test
    void twoThatAreAlikeHaveNothingToTake() throws CannotBe {
        done(OwnGlossary.term(null, ROPE));
        Merge merge = OwnGlossary.compare(show, List.of(), List.of(ROPE));
        assertThatThrownBy(() -> merge.take(true).of(show))
                .isInstanceOf(CannotBe.class)
                .hasMessageContaining("The other glossary has nothing");
    }
}
