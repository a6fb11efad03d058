package org.panwright.app.papers;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.panwright.print.PaperOrder;

/**
 * What was chosen about one order, as words by the names of its parts, for example {@code paper}
 * and {@code A5}.
 *
 * <p>Orders are records; their parts are read and replaced by reflection, so that a new kind of
 * paper is remembered without further code. A part that names something of a kit is not remembered.
 */
final class OrderChoices {
  private static final String NONE = "";

  private OrderChoices() {}

  /** The choices in which an order differs from the usual one of its kind. */
  static Map<String, String> of(PaperOrder order, PaperOrder usual) {
    Map<String, String> choices = new LinkedHashMap<>();
    for (RecordComponent part : order.getClass().getRecordComponents()) {
      Optional<String> words = words(value(part, order));
      if (words.isPresent() && !words.equals(words(value(part, usual)))) {
        choices.put(part.getName(), words.get());
      }
    }
    return choices;
  }

  /** The usual order with choices; one that makes no sense is passed over. */
  static PaperOrder restored(PaperOrder usual, Map<String, String> choices) {
    PaperOrder order = usual;
    for (RecordComponent part : usual.getClass().getRecordComponents()) {
      String words = choices.get(part.getName());
      if (words != null) {
        order = read(part.getType(), words).flatMap(with(order, part)).orElse(order);
      }
    }
    return order;
  }

  private static java.util.function.Function<Object, Optional<PaperOrder>> with(
      PaperOrder order, RecordComponent changed) {
    return value -> {
      RecordComponent[] parts = order.getClass().getRecordComponents();
      Object[] values =
          Stream.of(parts)
              .map(part -> part.getName().equals(changed.getName()) ? value : value(part, order))
              .toArray();
      try {
        Class<?>[] types = Stream.of(parts).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Constructor<? extends PaperOrder> made = order.getClass().getDeclaredConstructor(types);
        return Optional.of(made.newInstance(values));
      } catch (ReflectiveOperationException outOfRange) {
        return Optional.empty();
      }
    };
  }

  private static Object value(RecordComponent part, PaperOrder order) {
    try {
      return part.getAccessor().invoke(order);
    } catch (ReflectiveOperationException closed) {
      throw new IllegalStateException("an order hides its " + part.getName(), closed);
    }
  }

  /** Empty for what is not to be remembered. */
  private static Optional<String> words(Object value) {
    if (value instanceof Enum<?> word) {
      return Optional.of(word.name());
    } else if (value instanceof Boolean || value instanceof Integer) {
      return Optional.of(value.toString());
    } else if (value instanceof OptionalDouble number) {
      return Optional.of(number.isPresent() ? Double.toString(number.getAsDouble()) : NONE);
    }
    return Optional.empty();
  }

  private static Optional<Object> read(Class<?> type, String words) {
    try {
      if (type.isEnum()) {
        return Stream.<Object>of(type.getEnumConstants())
            .filter(constant -> ((Enum<?>) constant).name().equals(words))
            .findFirst();
      } else if (type == boolean.class) {
        return Optional.of(words.equals("true"));
      } else if (type == int.class) {
        return Optional.of(Integer.valueOf(words));
      } else if (type == OptionalDouble.class) {
        return Optional.of(
            words.equals(NONE)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(words)));
      }
      return Optional.empty();
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
  }
}
