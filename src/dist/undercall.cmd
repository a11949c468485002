@echo off
rem Starts Undercall from the folder it lies in.
setlocal
set "HOME_DIR=%~dp0"
where java >nul 2>nul
if errorlevel 1 (
  echo RUN-001 java: found none, expected Java 17 or newer on the path 1>&2
  exit /b 1
)
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Xmx256m -Xmn12m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 "-Dundercall.home=%HOME_DIR%." -jar "%HOME_DIR%undercall.jar" %*
exit /b %ERRORLEVEL%
