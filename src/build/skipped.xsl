<!-- One line for each test that a report of Surefire says was skipped: class, test, reason. -->
<xsl:stylesheet version="1.0" xmlns:xsl="http://www.w3.org/1999/XSL/Transform">
  <xsl:output method="text"/>
  <xsl:template match="/">
    <xsl:for-each select="//testcase[skipped]">
      <xsl:value-of select="concat(@classname, ' | ', @name, ' | ', normalize-space(skipped/@message), '&#10;')"/>
    </xsl:for-each>
  </xsl:template>
</xsl:stylesheet>
