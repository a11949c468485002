@echo off
rem Starts Undercall; builds it first if it is not built.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%target\undercall.jar"
set "READY=%HOME_DIR%target\undercall.ready"
where java >nul 2>nul
if errorlevel 1 (
  echo RUN-001 java: found none, expected a JDK 17 or newer on the path 1>&2
  exit /b 1
)
if not exist "%READY%" (
  where mvn >nul 2>nul
  if errorlevel 1 (
    echo RUN-002 mvn: found none, expected Maven 3.8 or newer to build Undercall 1>&2
    exit /b 1
  )
  echo Building Undercall; the first time, its libraries and the speech model are fetched. 1>&2
  pushd "%HOME_DIR%"
  call mvn -B -q -DskipTests package
  if errorlevel 1 (
    popd
    exit /b 1
  )
  java -Xmx256m "-Dundercall.home=%HOME_DIR%." -jar "%JAR%" prepare
  if errorlevel 1 (
    popd
    exit /b 1
  )
  popd
  type nul > "%READY%"
)
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Xmx256m -Xmn12m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 "-Dundercall.home=%HOME_DIR%." -jar "%JAR%" %*
exit /b %ERRORLEVEL%
