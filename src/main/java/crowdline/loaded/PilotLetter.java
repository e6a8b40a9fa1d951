package crowdline.loaded;

import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.loaded.PilotQuestions.Question;
import crowdline.show.Act;
import crowdline.show.Performer;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.timing.Pass;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What to ask the pilot of one act, as text that can be sent.
 *
 * @param act which act
 * @param to the pilot's name
 * @param questions group by group
 */
public record PilotLetter(Act act, String to, List<Question> questions) {
    public PilotLetter {
        questions = List.copyOf(questions);
    }

    /** One for each act that rests on something assumed. */
    public static List<PilotLetter> of(Show show, Catalogue shipped, List<Pass> passes) {
        Catalogue catalogue = shipped.with(show.figures());
        List<PilotLetter> letters = new ArrayList<>();
        for (Act act : show.acts()) {
            if (!show.canBePredicted(act) || !ActOrigins.mayAssume(show, act)) {
                continue;
            }
            Flight flight = new Predictor(show, shipped, act, act.variants().get(0)).predict();
            ActOrigins origins = ActOrigins.of(show, act, flight, catalogue, passes);
            List<Question> questions = PilotQuestions.of(show, act, flight, catalogue, origins);
            if (!questions.isEmpty()) {
                String to = show.performer(act.performer()).map(Performer::name).orElse(act.performer());
                letters.add(new PilotLetter(act, to, questions));
            }
        }
        return letters;
    }

    /** As text to send. */
    public static List<String> lines(List<PilotLetter> letters) {
        List<String> lines = new ArrayList<>();
        for (PilotLetter letter : letters) {
            lines.add("");
            lines.add("To ask " + letter.to() + " about \"" + letter.act().title() + "\", the most important first:");
            String group = "";
            for (Question question : letter.questions()) {
                if (!question.group().equals(group)) {
                    group = question.group();
                    lines.add(group);
                }
                lines.add("- " + question.text());
            }
        }
        return lines;
    }

    /** As JSON, one row for each question. */
    public List<Map<String, Object>> rows() {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Question question : questions) {
            Map<String, Object> row = new LinkedHashMap<>();
            row.put("act", act.id());
            row.put("performer", to);
            row.put("group", question.group());
            row.put("question", question.text());
            rows.add(row);
        }
        return rows;
    }
}
