package org.undercall.adapter.procedure;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.TextNode;
import org.undercall.text.Shown;

/**
 * Makes nodes with exact decimals, whose texts print themselves without an object mapper.
 *
 * <p>The schema validator prints every word of every choice when it is made ready. With the texts
 * of Jackson this builds a whole object mapper, which nothing else in the reading needs and which
 * costs several hundred classes at the start.
 */
final class LightNodes extends JsonNodeFactory {
  private static final long serialVersionUID = 1L;

  LightNodes() {
    super(true);
  }

  @Override
  public TextNode textNode(String text) {
    return text == null ? null : new LightText(text);
  }

  private static final class LightText extends TextNode {
    private static final long serialVersionUID = 1L;

    LightText(String text) {
      super(text);
    }

    @Override
    public String toString() {
      return Shown.quoted(textValue());
    }
  }
}
