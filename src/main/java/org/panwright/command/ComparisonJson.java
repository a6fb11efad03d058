package org.panwright.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.panwright.analysis.compare.Comparison;
import org.panwright.analysis.compare.Move;
import org.panwright.analysis.compare.SubjectPair;
import org.panwright.analysis.finding.HueGap;
import org.panwright.analysis.judge.Judgement;
import org.panwright.analysis.mud.Dark;
import org.panwright.analysis.subject.Match;
import org.panwright.colour.Lab;
import org.panwright.kit.Box;
import org.panwright.kit.Kit;
import org.panwright.kit.Lineup;
import org.panwright.kit.Well;
import org.panwright.paint.Paint;
import org.panwright.words.ColourWords;
import org.panwright.words.ComparisonWords;

/** A comparison as JSON; see docs/command-line.md for the fields. */
final class ComparisonJson {
  private static final int CHROMA_DECIMALS = 4;

  private ComparisonJson() {}

  static ObjectNode of(Judgement first, Judgement second, List<SubjectPair> pairs) {
    Comparison comparison = Comparison.of(first, second);
    Kit kit = first.kit();
    ObjectNode root = Json.object();
    root.set("first", side(first, comparison.firstDarkest()));
    root.set("second", side(second, comparison.secondDarkest()));
    root.set("lost", shifts(comparison.lost()));
    root.set("won", shifts(comparison.won()));
    root.put("firstCovered", Json.rounded(comparison.firstCovered(), 4));
    root.put("secondCovered", Json.rounded(comparison.secondCovered(), 4));
    root.set("onlyFirst", labs(comparison.onlyFirst()));
    root.set("onlySecond", labs(comparison.onlySecond()));
    root.set("inCommon", names(comparison.inCommon(), kit));
    root.set("leaving", names(comparison.leaving(), kit));
    root.set("coming", names(comparison.coming(), kit));
    root.set("subjects", subjects(pairs));
    root.put("sameBox", comparison.sameBox());
    root.set("moves", moves(comparison, kit, kit.boxOf(lineup(first))));
    return root;
  }

  private static Lineup lineup(Judgement judgement) {
    return judgement.kit().lineup(judgement.lineupId()).orElseThrow();
  }

  private static ObjectNode side(Judgement judgement, Optional<Dark> darkest) {
    ObjectNode side = Json.object();
    side.put("lineup", lineup(judgement).name());
    side.put("reach", judgement.reach().size());
    side.set("ring", Json.numbers(judgement.ring().toArray(), CHROMA_DECIMALS));
    side.put("darkestDry", darkest.map(d -> Json.rounded(d.dryL(), 2)).orElse(null));
    side.put("darkestWet", darkest.map(d -> Json.rounded(d.wetL(), 2)).orElse(null));
    ArrayNode cautions = side.putArray("cautions");
    ComparisonWords.cautions(judgement).forEach(cautions::add);
    return side;
  }

  private static ArrayNode shifts(List<Comparison.Shift> shifts) {
    ArrayNode list = Json.array();
    for (Comparison.Shift shift : shifts) {
      ObjectNode node = list.addObject();
      node.put("from", shift.fromDeg());
      node.put("to", shift.toDeg());
      node.put("hues", ColourWords.arc(HueGap.hues(shift.fromDeg(), shift.toDeg())));
      node.put("less", Json.rounded(shift.less(), CHROMA_DECIMALS));
      node.put("more", Json.rounded(shift.more(), CHROMA_DECIMALS));
    }
    return list;
  }

  private static ArrayNode labs(List<Lab> colours) {
    ArrayNode list = Json.array();
    colours.forEach(colour -> list.add(Json.lab(colour)));
    return list;
  }

  private static ArrayNode names(List<String> paints, Kit kit) {
    ArrayNode list = Json.array();
    paints.forEach(id -> list.add(name(id, kit)));
    return list;
  }

  private static ArrayNode subjects(List<SubjectPair> pairs) {
    ArrayNode list = Json.array();
    for (SubjectPair pair : pairs) {
      ObjectNode node = list.addObject();
      node.put("name", pair.subject().name());
      node.set("lab", Json.lab(pair.subject().lab()));
      node.put("first", deltaE(pair.first()));
      node.put("second", deltaE(pair.second()));
    }
    return list;
  }

  private static Double deltaE(Optional<Match> match) {
    return match.map(m -> Json.rounded(m.deltaE(), 2)).orElse(null);
  }

  private static ArrayNode moves(Comparison comparison, Kit kit, Box box) {
    ArrayNode list = Json.array();
    for (Move move : comparison.moves()) {
      ObjectNode node = list.addObject();
      node.put("paint", name(move.paintId(), kit));
      node.put("from", label(move.fromWellId(), box));
      node.put("to", label(move.toWellId(), box));
    }
    return list;
  }

  private static String label(Optional<String> wellId, Box box) {
    return wellId.flatMap(box::find).map(Well::label).orElse(null);
  }

  private static String name(String paintId, Kit kit) {
    return kit.shelf().find(paintId).map(Paint::name).orElse(paintId);
  }
}
