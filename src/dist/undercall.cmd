@echo off
rem Starts Undercall from the folder it lies in.
setlocal
set "HOME_DIR=%~dp0"
set "JAVA=java"
set "FOUND="
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "FOUND=1"
if not defined JAVA_HOME where java >nul 2>nul && set "FOUND=1"
if not defined FOUND (
  echo RUN-001 java: found none, expected Java 17 or newer on the path or in JAVA_HOME 1>&2
  exit /b 1
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Xmx256m -Xmn12m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 "-Dundercall.home=%HOME_DIR%." -jar "%HOME_DIR%undercall.jar" %*
exit /b %ERRORLEVEL%
