package crowdline.glossary.drill;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.glossary.Glossary;
import crowdline.glossary.drill.Memory.Answer;
import crowdline.glossary.drill.Question.Kind;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.sight.FigureAlone;
import crowdline.sight.picture.Flown;
import crowdline.storage.show.CatalogueFile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class QuestionsTest {
    private final Catalogue catalogue = CatalogueFile.shipped();
    private Map<String, Flown> flown = Map.of();
    private Questions questions = new Questions(Glossary.of(catalogue, List.of(), List.of()), Map.of());

    @BeforeAll
    void fly() {
        FigureAlone alone = new FigureAlone(catalogue);
        flown = catalogue.entries().stream()
                .collect(
                        Collectors.toMap(CatalogueEntry::name, e -> alone.fly(e).flown()));
        questions = new Questions(Glossary.of(catalogue, List.of(), List.of()), flown);
    }

    private Session session(Map<String, Memory> known, long today, Map<String, Memory> kept) {
        return new Session(questions, Set.of(), known, today, 7, kept::put);
    }

    private static Question asked(Session session) {
        Question question = session.now();
        assertThat(question).isNotNull();
        return question;
    }

    private static int choice(Question question, boolean well) {
        if (question.judgedByOneself()) {
            return well ? 0 : 2;
        }
        if (question.kind() == Kind.WRITE) {
            return well ? question.right() : -1;
        }
        return well
                ? question.right()
                : (question.right() + 1) % question.choices().size();
    }

    @Test
    void everyFigureThatFliesIsAskedByItsName() {
        assertThat(catalogue.entries())
                .filteredOn(e -> !flown.getOrDefault(e.name(), Flown.NONE).isEmpty())
                .hasSizeGreaterThan(40)
                .allSatisfy(e -> assertThat(questions.kinds(e.name())).contains(Kind.NAME, Kind.EXPLAIN));
        assertThat(flown).containsKeys("slow roll", "aileron roll", "steep turn");
    }

    @Test
    void whatSeveralFlyTogetherIsShownByAllOfThem() {
        Random random = new Random(4);
        assertThat(catalogue.entries())
                .filteredOn(e -> e.family().equals("formation"))
                .hasSize(12)
                .allSatisfy(e -> {
                    assertThat(questions.kinds(e.name())).contains(Kind.NAME, Kind.WRITE);
                    assertThat(questions
                                    .ask(e.name(), Kind.NAME, random)
                                    .flown()
                                    .company()
                                    .others())
                            .isNotEmpty();
                });
    }

    @Test
    void whatIsOnlySketchedHasNoNumbersToBeHeard() {
        assertThat(catalogue.entries())
                .filteredOn(
                        e -> flown.getOrDefault(e.name(), Flown.NONE).company().sketched())
                .isNotEmpty()
                .allSatisfy(e -> assertThat(questions.kinds(e.name())).doesNotContain(Kind.LOADS));
    }

    @Test
    void everyQuestionHasOneRightAnswerThatNoOtherAnswerLooksLike() {
        Random random = new Random(3);
        for (String figure : questions.figures()) {
            for (Kind kind : questions.kinds(figure)) {
                Question question = questions.ask(figure, kind, random);
                assertThat(question.choices()).as(figure + " " + kind).doesNotHaveDuplicates();
                assertThat(question.text()).isNotBlank();
                // "The spin begins" would tell.
                assertThat(question.flown().captions()).isEmpty();
                if (kind == Kind.NAME || kind == Kind.APART) {
                    assertThat(question.choices().get(question.right())).isEqualTo(figure);
                    assertThat(question.flown().isEmpty()).isFalse();
                    for (String other : question.choices()) {
                        assertThat(other.equals(figure)
                                        || !new Likeness(flown.getOrDefault(figure, Flown.NONE))
                                                .looksTheSame(new Likeness(flown.getOrDefault(other, Flown.NONE))))
                                .isTrue();
                    }
                }
            }
        }
    }

    @Test
    void wrongAnswersAreWhatItIsMixedUpWith() {
        // The texts of both name the other.
        Question question = questions.ask("half loop with roll out on top", Kind.APART, new Random(1));
        assertThat(question.choices()).hasSize(2).contains("half loop with roll out on top");
        for (String figure : questions.figures()) {
            if (questions.kinds(figure).contains(Kind.APART)) {
                Set<String> one = new HashSet<>(
                        questions.ask(figure, Kind.APART, new Random(1)).choices());
                one.remove(figure);
                String other = one.iterator().next();
                assertThat(mentions(figure, other) || mentions(other, figure))
                        .as(figure + " and " + other)
                        .isTrue();
            }
        }
    }

    private boolean mentions(String figure, String other) {
        CatalogueEntry entry = catalogue.find(figure).orElseThrow();
        return Glossary.of(catalogue, List.of(), List.of()).mentionedIn(entry.mixUps()).stream()
                .anyMatch(item -> item.name().equals(other));
    }

    @Test
    void loadAtTheBottomOfALoopIsTheStrongestOfItsLowestQuarter() {
        Flown loop = flown.getOrDefault("loop", Flown.NONE);
        double low = loop.reach().least().z();
        double strongest = loop.poses().stream()
                .filter(p -> p.place().z() < low + loop.reach().size().z() / 4)
                .mapToDouble(p -> p.g())
                .max()
                .orElseThrow();
        List<String> bottoms = new ArrayList<>();
        Random random = new Random(5);
        for (int i = 0; i < 20; i++) {
            Question question = questions.ask("loop", Kind.LOADS, random);
            assertThat(question.choices()).hasSize(3).doesNotHaveDuplicates();
            if (question.asks().contains("bottom")) {
                bottoms.add(question.choices().get(question.right()));
            }
        }
        assertThat(bottoms)
                .isNotEmpty()
                .allMatch(said -> said.startsWith(String.format(Locale.ROOT, "%.1f times", strongest)));
    }

    @Test
    void everyKindOfQuestionComesAndTheSameSeedAsksTheSame() {
        Session one = session(Map.of(), 1, new HashMap<>());
        Session other = session(Map.of(), 1, new HashMap<>());
        Set<Kind> kinds = new HashSet<>();
        for (int i = 0; i < 100; i++) {
            assertThat(asked(one)).isEqualTo(asked(other));
            kinds.add(asked(one).kind());
            one.next();
            other.next();
        }
        assertThat(kinds).containsExactlyInAnyOrder(Kind.values());
    }

    @Test
    void aWrittenAnswerIsWorthMoreThanOneChosen() {
        Question written = questions.ask("loop", Kind.WRITE, new Random(1));
        assertThat(written.answer(written.right())).isEqualTo(Memory.Answer.PERFECT);
        assertThat(written.answer(-1)).isEqualTo(Memory.Answer.WRONG);
        assertThat(questions.isNamed("loop", "the lopp")).isTrue();
        assertThat(questions.isNamed("loop", "stall turn")).isFalse();
        assertThat(questions.isNamed("loop", "")).isFalse();
    }

    @Test
    void whatIsDueComesFirstAndWhatIsNotComesLast() {
        Map<String, Memory> known = new HashMap<>();
        questions.figures().forEach(name -> known.put(name, new Memory(2, 2.5, 6, 100)));
        known.put("loop", new Memory(1, 2.5, 1, 98));
        known.put("slow roll", new Memory(1, 2.5, 1, 97));
        known.remove("avalanche");
        Session session = session(known, 101, new HashMap<>());
        assertThat(session.due()).isEqualTo(3);
        List<String> order = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            order.add(asked(session).figure());
            session.next();
        }
        assertThat(order).containsExactly("slow roll", "loop", "avalanche");
    }

    @Test
    void whatWasMissedComesAgainAfterThreeOthersUntilItIsGoodAndIsDueTomorrow() {
        Map<String, Memory> kept = new HashMap<>();
        Session session = session(Map.of(), 50, kept);
        String missed = asked(session).figure();
        assertThat(session.answer(choice(asked(session), false))).isEqualTo(Answer.WRONG);
        List<String> after = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            session.next();
            after.add(asked(session).figure());
            session.answer(choice(asked(session), true));
        }
        assertThat(after.subList(0, 3)).doesNotContain(missed);
        assertThat(after.get(3)).isEqualTo(missed);
        assertThat(session.good()).isEqualTo(4);
        // Told three questions ago: that it is known now says nothing of tomorrow.
        assertThat(kept).containsEntry(missed, new Memory(0, 2.5, 1, 50)).hasSize(4);
    }

    @Test
    void rightAnswerAheadOfItsDayMovesNothing() {
        Map<String, Memory> known = new HashMap<>();
        questions.figures().forEach(name -> known.put(name, new Memory(2, 2.5, 6, 100)));
        Map<String, Memory> kept = new HashMap<>();
        Session session = session(known, 101, kept);
        session.answer(choice(asked(session), true));
        assertThat(kept).isEmpty();
    }

    @Test
    void onlyTheFiguresOfAnActAreAskedWithAnyWrongAnswers() {
        Set<String> act = Set.of("loop", "slow roll", "nothing that is known");
        Session session = new Session(questions, act, Map.of(), 1, 2, (f, m) -> {});
        for (int i = 0; i < 12; i++) {
            assertThat(act).contains(asked(session).figure());
            session.next();
        }
    }
}
