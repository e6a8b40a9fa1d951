package crowdline.edit.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.arrange.ShowArranging;
import crowdline.edit.Change;
import crowdline.edit.EditedShow;
import crowdline.edit.act.CannotBe;
import crowdline.edit.act.Edit;
import crowdline.show.Gaps;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.Speaker;
import crowdline.show.Speakers;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Duties and pieces as they are typed. */
class DutyEditsTest {
    private Show show = ShowArranging.empty("A day", LocalDate.of(2027, 5, 2), ZoneOffset.UTC, null);

    private void make(Edit edit, String undo) throws CannotBe {
        Change change = edit.of(show);
        EditedShow edited = EditedShow.opened(show).changed(change);
        assertThat(edited.undoName().orElse("")).contains(undo);
        assertThat(edited.undone().now()).isEqualTo(show);
        show = change.show();
    }

    private void refused(ThrowingCallable making, String why) {
        assertThatThrownBy(making)
                .isInstanceOfSatisfying(CannotBe.class, e -> assertThat(e.why()).contains(why));
    }

    private Remark duty() {
        return show.remarks().get(0);
    }

    @Test
    void aDutyIsAddedWordedAndAskedFor() throws CannotBe {
        make(AskedDuties.add("Thank the dairy."), "Add a duty");
        assertThat(duty().kind()).isEqualTo(RemarkKind.DUTY);
        assertThat(duty().duty()).isEqualTo(new DutyTimes(1, null, null, null, null, false));
        String id = duty().id();
        make(AskedDuties.times(id, "4"), "When to say the duty “Thank the dairy.”");
        make(AskedDuties.apart(id, "20,5"), "When to say");
        make(AskedDuties.by(id, "9:30"), "When to say");
        make(AskedDuties.after(id, "a1"), "When to say");
        make(AskedDuties.before(id, "a2"), "When to say");
        make(AskedDuties.inActs(id, true), "When to say");
        make(AskedDuties.words(id, "Thank the dairy, again."), "Words of the duty");
        make(AskedDuties.shortWords(id, "The dairy."), "Short words");
        assertThat(duty().text()).isEqualTo("Thank the dairy, again.");
        assertThat(duty().shortText()).isEqualTo("The dairy.");
        assertThat(duty().duty()).isEqualTo(new DutyTimes(4, 20.5, LocalTime.of(9, 30), "a1", "a2", true));
        make(AskedDuties.apart(id, " "), "When to say");
        make(AskedDuties.by(id, ""), "When to say");
        make(AskedDuties.after(id, null), "When to say");
        assertThat(duty().duty()).isEqualTo(new DutyTimes(4, null, null, null, "a2", true));
        make(AskedDuties.remove(id), "Remove the duty");
        assertThat(show.remarks()).isEmpty();
    }

    @Test
    void otherWordsLeaveADutyToWhoSaysItInBothLanguages() throws CannotBe {
        make(AskedDuties.add("Thank the dairy."), "Add a duty");
        Translation french = new Translation("fr", "Merci.", "Claire");
        show = show.withActs(show.acts(), List.of(duty().saidBy("Ben").translated(french)));
        make(AskedDuties.words(duty().id(), "Thank the dairy, again."), "Words of the duty");
        make(AskedDuties.shortWords(duty().id(), "The dairy."), "Short words");
        assertThat(duty().speaker()).isEqualTo("Ben");
        assertThat(duty().translation()).as("kept, and now older").isEqualTo(french.older(true));
    }

    @Test
    void whatADutyCannotBeIsSaidWithWhatIsAllowed() throws CannotBe {
        make(AskedDuties.add("Thank the dairy."), "Add a duty");
        String id = duty().id();
        refused(
                () -> AskedDuties.times(id, "often").of(show),
                "How often a duty is said is \"often\"; it must be a number");
        refused(() -> AskedDuties.times(id, "0").of(show), "times is 0; it must be from 1 to 100");
        refused(() -> AskedDuties.times(id, "101").of(show), "times is 101; it must be from 1 to 100");
        refused(() -> AskedDuties.apart(id, "0.5").of(show), "apartMinutes is 0.5; it must be from 1 to 1,440");
        refused(
                () -> AskedDuties.by(id, "half four").of(show),
                "The hour is \"half four\"; it must be one such as 16:30");
        refused(() -> AskedDuties.by(id, "25:00").of(show), "it must be one such as 16:30");
        refused(() -> AskedDuties.words(id, " ").of(show), "remark text");
        make(AskedDuties.after(id, "a1"), "When to say");
        refused(() -> AskedDuties.before(id, "a1").of(show), "name two acts");
        refused(() -> AskedDuties.times("gone", "2").of(show), "That duty is no longer in the show");
    }

    @Test
    void aPieceIsTypedWithItsAnswersInBrackets() throws CannotBe {
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        make(
                GapPieces.parts(id, "Who are you? [30 s]\n\n\nAnd why?[ 12,5 ]\n\nThanks."),
                "Words of the piece “Interview”");
        make(GapPieces.rename(id, "The tower"), "Rename the piece");
        make(GapPieces.before(id, "a1"), "Gap for the piece");
        make(GapPieces.talk("35 %"), "Talk in gaps");
        Piece piece = new Piece(
                id,
                "The tower",
                "a1",
                List.of(
                        new Piece.Part("Who are you?", 30),
                        new Piece.Part("And why?", 12.5),
                        new Piece.Part("Thanks.", 0)));
        assertThat(show.gaps()).isEqualTo(new Gaps(35, List.of(piece)));
        assertThat(GapPieces.typed(piece)).isEqualTo("Who are you? [30 s]\n\nAnd why? [12.5 s]\n\nThanks.");
        Show before = show;
        assertThat(GapPieces.parts(id, GapPieces.typed(piece)).of(before).show())
                .isEqualTo(before);
        make(GapPieces.remove(id), "Remove the piece");
        assertThat(show.gaps().pieces()).isEmpty();
        assertThat(show.gaps().talkPercent()).isEqualTo(35);
    }

    @Test
    void whoSaysAPartAndWhatItIsInAnotherLanguageAreTypedWithIt() throws CannotBe {
        show = show.withSpeakers(
                new Speakers(List.of(new Speaker("Ann Loder", false), new Speaker("Ben Varley", false))));
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        make(GapPieces.saidBy(id, "Ben Varley"), "Who says the piece “Interview”");
        String typed = "ann loder: Who are you: \nthe tower? [30 s]\n[fr, Claire] Qui \u00eates-vous ?\nVous ?\n\n"
                + "Note: at four o'clock.\n\n[a] aside, she said: Ben Varley: yes.";
        make(GapPieces.parts(id, typed), "Words of the piece");
        Piece piece = show.gaps().pieces().get(0);
        assertThat(piece.parts())
                .containsExactly(
                        new Piece.Part(
                                "Who are you: \nthe tower?",
                                30,
                                "Ann Loder",
                                new Translation("fr", "Qui \u00eates-vous ?\nVous ?", "Claire")),
                        new Piece.Part("Note: at four o'clock.", 0),
                        new Piece.Part("[a] aside, she said: Ben Varley: yes.", 0));
        assertThat(piece.remarks())
                .extracting(Remark::speaker)
                .containsExactly("Ann Loder", "Ben Varley", "Ben Varley");
        assertThat(GapPieces.parts(id, GapPieces.typed(piece)).of(show).show()).isEqualTo(show);
        refused(
                () -> GapPieces.parts(id, "Well.\n\n[fr] Bonjour.").of(show),
                "has words in another language alone; write before it what it says in the first");
    }

    @Test
    @Timeout(5)
    void aPartOfColonsIsReadAtOnce() throws CannotBe {
        show = show.withSpeakers(new Speakers(IntStream.range(0, 20)
                .mapToObj(i -> new Speaker("Speaker " + i, false))
                .toList()));
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        String colons = "a:".repeat(2500);
        make(GapPieces.parts(id, (colons + "\n\n").repeat(50)), "Words");
        assertThat(show.gaps().pieces().get(0).parts()).hasSize(50).allMatch(part -> part.speaker() == null);
    }

    @Test
    void anEmptyLineWithinAPartAndAnOddNameDoNotBreakIt() throws CannotBe {
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        Translation french = new Translation("fr", "Bonjour.\n\nBienvenue.", "Cleo; the tall");
        show = show.withGaps(new Gaps(
                50,
                List.of(new Piece(
                        id, "Interview", null, List.of(new Piece.Part("Hello.\n \nWelcome.", 0, null, french))))));
        String typed = GapPieces.typed(show.gaps().pieces().get(0));
        make(GapPieces.parts(id, typed + "\n\nThanks."), "Words");
        assertThat(show.gaps().pieces().get(0).parts())
                .containsExactly(
                        new Piece.Part(
                                "Hello.\nWelcome.",
                                0,
                                null,
                                new Translation("fr", "Bonjour.\nBienvenue.", "Cleo; the tall")),
                        new Piece.Part("Thanks.", 0));
    }

    /** Who has left the list of speakers stands in the piece all the same. */
    @Test
    void aPartKeepsASpeakerWhoIsNotInTheShow() throws CannotBe {
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        Piece gone = new Piece(id, "Interview", null, List.of(new Piece.Part("Hello.", 0, "Cleo", null)));
        show = show.withGaps(new Gaps(50, List.of(gone)));
        make(GapPieces.parts(id, GapPieces.typed(gone).replace("Hello", "Good morning")), "Words of the piece");
        assertThat(show.gaps().pieces().get(0).parts())
                .containsExactly(new Piece.Part("Good morning.", 0, "Cleo", null));
    }

    @Test
    void anotherLanguageOfAPartIsOlderOnceItIsWordedAnewUntilTheMarkIsTakenOut() throws CannotBe {
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        make(GapPieces.parts(id, "Hello.\n[fr] Bonjour.\n\nGoodbye.\n[fr] Au revoir."), "Words");
        make(GapPieces.parts(id, "Hello you.\n[fr] Bonjour.\n\nGoodbye.\n[fr] Au revoir."), "Words");
        String marked = "Hello you.\n[fr; older than the text] Bonjour.\n\nGoodbye.\n[fr] Au revoir.";
        assertThat(GapPieces.typed(show.gaps().pieces().get(0))).isEqualTo(marked);
        make(GapPieces.parts(id, marked + "\n\nThanks."), "Words");
        assertThat(GapPieces.typed(show.gaps().pieces().get(0))).as("it stays").startsWith(marked);
        Show older = show;
        make(GapPieces.parts(id, marked.replace("; older than the text", "")), "Words");
        assertThat(GapPieces.typed(show.gaps().pieces().get(0))).doesNotContain("older");
        show = older;
        make(GapPieces.parts(id, marked.replace("; older than the text] Bonjour", "] Bonjour, vous")), "Words");
        assertThat(GapPieces.typed(show.gaps().pieces().get(0))).doesNotContain("older");
    }

    @Test
    void whatAPieceCannotBeIsSaidWithWhatIsAllowed() throws CannotBe {
        make(GapPieces.add("Interview"), "Add a piece");
        String id = show.gaps().pieces().get(0).id();
        refused(() -> GapPieces.parts(id, " \n\n ").of(show), "has no parts; it needs at least one");
        refused(() -> GapPieces.parts(id, "Why? [1801 s]").of(show), "answerS is 1,801; it must be from 0 to 1,800");
        refused(() -> GapPieces.talk("half").of(show), "Talk in gaps is \"half\"; it must be a percentage, such as 50");
        refused(() -> GapPieces.talk("101").of(show), "talkPercent is 101; it must be from 0 to 100");
        refused(() -> GapPieces.rename("gone", "x").of(show), "That piece is no longer in the show");
    }
}
