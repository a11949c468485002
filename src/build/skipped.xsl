<!-- One line for each test that a report of Surefire says was skipped: class, test, reason. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform">
  <xsl:output method="text"/>
  <xsl:template match="/">
    <xsl:for-each select="//testcase[skipped]">
      <xsl:sort select="@classname"/>
      <xsl:value-of select="@classname"/>
      <xsl:if test="@name != ''"><xsl:value-of select="concat(' | ', @name)"/></xsl:if>
      <xsl:text> | </xsl:text>
      <!-- of an assumption that does not hold, the first line of the trace has the reason -->
      <xsl:variable name="told" select="concat(skipped/@message, substring-before(concat(skipped, '&#10;'), '&#10;'))"/>
      <xsl:choose>
        <xsl:when test="contains($told, 'Assumption failed: ')">
          <xsl:value-of select="substring-after($told, 'Assumption failed: ')"/>
        </xsl:when>
        <xsl:otherwise><xsl:value-of select="normalize-space($told)"/></xsl:otherwise>
      </xsl:choose>
      <xsl:text>&#10;</xsl:text>
    </xsl:for-each>
  </xsl:template>
</xsl:stylesheet>
